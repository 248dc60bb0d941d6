package org.cantonment.references.buying;

import java.util.OptionalLong;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;

import org.cantonment.buying.solve.Column;
import org.cantonment.buying.solve.Programme;
import org.cantonment.buying.solve.Row;

/** A programme for SCIP, as it comes with OR-Tools. */
public final class ScipModel {

    private ScipModel() {
    }

    /** The least cost; empty if there is none within so many milliseconds. */
    public static OptionalLong solve(Programme programme, long milliseconds) {
        MPSolver solver = MPSolver.createSolver("SCIP");
        solver.setTimeLimit(milliseconds);
        MPVariable[] values = new MPVariable[programme.columns().size()];
        MPObjective cost = solver.objective();
        for (int j = 0; j < values.length; j++) {
            Column column = programme.columns().get(j);
            values[j] = solver.makeIntVar(column.lower(), column.upper(), "c" + j);
            cost.setCoefficient(values[j], column.cost());
        }
        for (Row row : programme.rows()) {
            MPConstraint constraint = solver.makeConstraint(row.least(), MPSolver.infinity());
            for (int k = 0; k < row.size(); k++) {
                constraint.setCoefficient(values[row.column(k)], row.factor(k));
            }
        }
        cost.setMinimization();
        MPSolver.ResultStatus status = solver.solve();
        OptionalLong found = status == MPSolver.ResultStatus.OPTIMAL ? OptionalLong.of(Math.round(cost.value()))
                : OptionalLong.empty();
        solver.delete();
        return found;
    }
}
