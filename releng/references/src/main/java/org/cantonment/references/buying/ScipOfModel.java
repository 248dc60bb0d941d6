package org.cantonment.references.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import com.google.ortools.sat.ConstraintProto;
import com.google.ortools.sat.CpModelProto;
import com.google.ortools.sat.CpObjectiveProto;
import com.google.ortools.sat.IntegerVariableProto;
import com.google.ortools.sat.LinearConstraintProto;

/**
 * A model that was written for CP-SAT, for SCIP as it comes with OR-Tools: a line that holds only under conditions is slackened
 * by as much as its terms can come to where they are not met.
 */
final class ScipOfModel {

    private final MPSolver solver = MPSolver.createSolver("SCIP");
    private final List<MPVariable> values = new ArrayList<>();

    private ScipOfModel(CpModelProto model) {
        for (IntegerVariableProto variable : model.getVariablesList()) {
            int last = variable.getDomainCount() - 1;
            if (last != 1) {
                throw new IllegalArgumentException("A domain with holes: " + variable.getName());
            }
            values.add(solver.makeIntVar(variable.getDomain(0), variable.getDomain(1), "v" + values.size()));
        }
        model.getConstraintsList().forEach(this::add);
        CpObjectiveProto objective = model.getObjective();
        for (int i = 0; i < objective.getVarsCount(); i++) {
            double before = solver.objective().getCoefficient(values.get(objective.getVars(i)));
            solver.objective().setCoefficient(values.get(objective.getVars(i)), before + objective.getCoeffs(i));
        }
        solver.objective().setOffset(objective.getOffset());
        solver.objective().setMinimization();
    }

    /**
     * The least cost; empty if the model cannot be kept.
     *
     * @throws IllegalStateException if SCIP takes longer than so many milliseconds
     */
    static OptionalLong solve(CpModelProto model, long milliseconds) {
        ScipOfModel scip = new ScipOfModel(model);
        scip.solver.setTimeLimit(milliseconds);
        MPSolver.ResultStatus status = scip.solver.solve();
        if (status != MPSolver.ResultStatus.OPTIMAL && status != MPSolver.ResultStatus.INFEASIBLE) {
            throw new IllegalStateException("The reference did not get done: " + status);
        }
        OptionalLong least = status == MPSolver.ResultStatus.INFEASIBLE ? OptionalLong.empty()
                : OptionalLong.of(Math.round(scip.solver.objective().value()));
        scip.solver.delete();
        return least;
    }

    private void add(ConstraintProto constraint) {
        if (constraint.hasLinear()) {
            linear(constraint.getLinear(), constraint.getEnforcementLiteralList());
        } else if (constraint.hasBoolOr()) {
            any(constraint.getBoolOr().getLiteralsList());
        } else {
            throw new IllegalArgumentException("No line that SCIP was told of: " + constraint);
        }
    }

    private void linear(LinearConstraintProto line, List<Integer> conditions) {
        long least = line.getDomain(0);
        long most = line.getDomain(line.getDomainCount() - 1);
        double low = 0;
        double high = 0;
        for (int i = 0; i < line.getVarsCount(); i++) {
            MPVariable value = values.get(line.getVars(i));
            double one = line.getCoeffs(i) * value.lb();
            double other = line.getCoeffs(i) * value.ub();
            low += Math.min(one, other);
            high += Math.max(one, other);
        }
        if (least > low) {
            bound(line, least, Double.POSITIVE_INFINITY, conditions, least - low);
        }
        if (most < high) {
            bound(line, Double.NEGATIVE_INFINITY, most, conditions, most - high);
        }
    }

    /** @param slack what is added to the line for each condition that is not met */
    private void bound(LinearConstraintProto line, double least, double most, List<Integer> conditions, double slack) {
        double met = 0;
        MPConstraint constraint = solver.makeConstraint(least, most);
        for (int i = 0; i < line.getVarsCount(); i++) {
            MPVariable value = values.get(line.getVars(i));
            constraint.setCoefficient(value, constraint.getCoefficient(value) + line.getCoeffs(i));
        }
        for (int literal : conditions) {
            // Not met is 1 less the value, or the value where the condition is that it be none.
            MPVariable value = values.get(literal < 0 ? -literal - 1 : literal);
            constraint.setCoefficient(value, constraint.getCoefficient(value) + (literal < 0 ? slack : -slack));
            met += literal < 0 ? 0 : slack;
        }
        constraint.setBounds(least - met, most - met);
    }

    private void any(List<Integer> literals) {
        MPConstraint constraint = solver.makeConstraint(1, Double.POSITIVE_INFINITY);
        double least = 1;
        for (int literal : literals) {
            constraint.setCoefficient(values.get(literal < 0 ? -literal - 1 : literal), literal < 0 ? -1 : 1);
            least -= literal < 0 ? 1 : 0;
        }
        constraint.setLb(least);
    }
}
