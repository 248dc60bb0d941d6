package org.cantonment.references.reach;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;

import org.cantonment.buying.reach.Asked;
import org.cantonment.buying.reach.Formation.Billet;
import org.cantonment.buying.reach.Formation.Room;
import org.cantonment.buying.reach.Strength;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Way;

/**
 * How many pieces a formation lacks, as plainly as it can be put, for CP-SAT of OR-Tools: wherever a formation lies within
 * others, so many of its billets are filled through each room, so many places take each unit or formation; each type stands so
 * often for each type that is needed. It knows families, handfuls and <i>one table, one meaning</i>.
 */
public final class ReachModel {

    private static final int MANY = 1_000;

    private final Outlook outlook;
    private final Asked asked;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder[] demand;
    private final LinearExprBuilder[] supply;
    private final LinearExprBuilder missing = LinearExpr.newBuilder();
    /** By who stands and what is needed. */
    private final Map<List<Integer>, IntVar> standing = new LinkedHashMap<>();

    private ReachModel(Outlook outlook, Asked asked) {
        this.outlook = outlook;
        this.asked = asked;
        demand = sums(outlook.family().length);
        supply = sums(outlook.family().length);
    }

    private static LinearExprBuilder[] sums(int count) {
        LinearExprBuilder[] sums = new LinearExprBuilder[count];
        for (int i = 0; i < count; i++) {
            sums[i] = LinearExpr.newBuilder();
        }
        return sums;
    }

    /** Fetches the library's own code, once. */
    public static void load() {
        Loader.loadNativeLibraries();
    }

    /** How many pieces are missing at the least; empty if a billet that must be filled cannot be. */
    public static OptionalInt solve(Outlook outlook, Asked asked) {
        return new ReachModel(outlook, asked).solve();
    }

    private OptionalInt solve() {
        place(asked.formation(), LinearExpr.constant(1));
        lay();
        for (int t = 0; t < demand.length; t++) {
            stand(t);
        }
        if (asked.allowance().oneTable()) {
            mean();
        }
        model.minimize(missing);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return OptionalInt.empty();
        }
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("The reference did not get done: " + status);
        }
        return OptionalInt.of((int) Math.round(solver.objectiveValue()));
    }

    /** A formation that is there so many times. */
    private void place(Id formation, LinearArgument times) {
        for (Billet billet : asked.known().get(formation).billets()) {
            LinearExprBuilder ways = LinearExpr.newBuilder();
            for (Room room : billet.rooms()) {
                IntVar way = model.newIntVar(0, MANY, "way");
                ways.addTerm(way, 1);
                fill(room, way);
            }
            model.addEquality(ways, times);
        }
    }

    private void fill(Room room, IntVar times) {
        int places = asked.strength() == Strength.LEAST ? room.min() : room.max();
        if (room.units().isEmpty() && room.formations().isEmpty()) {
            if (room.min() > 0) {
                model.addEquality(times, 0);
            }
            return;
        }
        LinearExprBuilder takes = LinearExpr.newBuilder();
        for (FieldUnit unit : room.units()) {
            IntVar taken = model.newIntVar(0, MANY, "unit");
            takes.addTerm(taken, 1);
            need(unit, taken);
        }
        for (Id inner : room.formations()) {
            IntVar taken = model.newIntVar(0, MANY, "formation");
            takes.addTerm(taken, 1);
            place(inner, taken);
        }
        model.addEquality(takes, LinearExpr.term(times, places));
    }

    private void need(FieldUnit unit, IntVar taken) {
        int step = asked.strength() == Strength.LEAST ? 0 : unit.steps().size() - 1;
        for (Requirement need : unit.steps().get(step).needs()) {
            demand[number(need.anyOf().get(0))].addTerm(taken, need.count());
        }
    }

    private static int number(Id type) {
        return Integer.parseInt(type.name().substring("Type-".length()));
    }

    private void lay() {
        outlook.supply().stacks().forEach(stack -> supply[number(stack.what())].add(stack.known()));
        for (Frames frames : outlook.supply().frames()) {
            LinearExprBuilder built = LinearExpr.newBuilder();
            for (Way way : frames.ways()) {
                IntVar count = model.newIntVar(0, frames.count(), "built");
                built.addTerm(count, 1);
                way.gives().forEach((type, gives) -> supply[number(type)].addTerm(count, gives));
            }
            model.addLessOrEqual(built, frames.count());
        }
    }

    private void stand(int needed) {
        LinearExprBuilder filled = LinearExpr.newBuilder();
        for (int t = 0; t < supply.length; t++) {
            if (outlook.family()[t] == outlook.family()[needed]) {
                IntVar stands = model.newIntVar(0, MANY, "stands");
                standing.put(List.of(t, needed), stands);
                filled.addTerm(stands, 1);
                supply[t].addTerm(stands, -1);
            }
        }
        IntVar gap = model.newIntVar(0, MANY, "missing");
        missing.addTerm(gap, 1);
        filled.addTerm(gap, 1);
        model.addEquality(filled, demand[needed]);
        if (needed == demand.length - 1) {
            for (LinearExprBuilder left : supply) {
                model.addGreaterOrEqual(left, 0);
            }
        }
    }

    private void mean() {
        standing.forEach((who, stands) -> {
            if (who.get(0).equals(who.get(1))) {
                BoolVar itself = model.newBoolVar("itself");
                model.addEquality(stands, 0).onlyEnforceIf(itself.not());
                standing.forEach((other, others) -> {
                    if (other.get(0).equals(who.get(0)) && !other.get(1).equals(who.get(0))) {
                        model.addEquality(others, 0).onlyEnforceIf(itself);
                    }
                });
            }
        });
    }
}
