package org.cantonment.references;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.OfEra;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.When;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.rules.Availability;
import org.cantonment.domain.rules.Billet;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Formation;
import org.cantonment.domain.rules.Limit;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Places;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Successor;
import org.cantonment.domain.rules.Support;
import org.cantonment.domain.rules.Unit;

/**
 * The least change as a model for CP-SAT of OR-Tools, made from the domain's records alone. It knows flat formations with
 * one way to fill a billet, one formation card, supports, strengths, successors, counts and shares of points; no options,
 * names, numbers before formations, or layers.
 */
public final class LeastChangeModel {

    private static final int UNITS = 1_000;
    private static final int MOST = 12;

    /** The optimum: points moved, and units touched. */
    public record Optimum(long moved, long units) {
    }

    private final Trial trial;
    private final int era;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private final LinearExprBuilder used = LinearExpr.newBuilder();
    private final Map<Id, Map<String, LinearExprBuilder>> sums = new HashMap<>();
    private final LinearExprBuilder formations = LinearExpr.newBuilder();

    private LeastChangeModel(Trial trial, int era) {
        this.trial = trial;
        this.era = era;
    }

    /** Loads the library's native code, once. */
    public static void load() {
        Loader.loadNativeLibraries();
    }

    /** Solves a trial for the era of a number; null if there is no change that makes the list legal. */
    public static Optimum solve(Trial trial, int era) {
        return new LeastChangeModel(trial, era).solve();
    }

    private Optimum solve() {
        Formation card = trial.book().formations().get(0);
        for (Entry squadron : trial.list().body().entries()) {
            squadron(card, squadron, model.newBoolVar("keep"));
        }
        for (int i = 0; i < 2; i++) {
            squadron(card, null, model.newBoolVar("new"));
        }
        supports();
        model.addLessOrEqual(used, trial.points());
        trial.book().limits().forEach(this::limit);
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return null;
        }
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("Not solved: " + status);
        }
        long value = Math.round(solver.objectiveValue());
        return new Optimum(value / UNITS, value % UNITS);
    }

    /** Formations that are not there yet, too: then only what is put in counts. */
    private void squadron(Formation card, Entry written, BoolVar there) {
        formations.add(there);
        Map<Id, LinearExprBuilder> standing = new TreeMap<>();
        if (written != null) {
            written.body().entries().forEach(entry -> copy(entry, there, standing));
        }
        for (Unit unit : trial.book().units()) {
            if (available(unit)) {
                boolean fits = card.facts(Billet.class).stream().anyMatch(b -> takes(b.places().get(0), unit));
                strengths(unit, era).forEach((strength, points) -> {
                    if (fits) {
                        IntVar more = model.newIntVar(0, MOST, "more");
                        model.addLessOrEqual(more, LinearExpr.term(there, MOST));
                        count(unit, points, more, standing);
                        cost.addTerm(more, points * UNITS + 1);
                    }
                });
            }
        }
        Map<Id, LinearExprBuilder> placed = new TreeMap<>();
        for (Billet billet : card.facts(Billet.class)) {
            place(billet.places().get(0), LinearExpr.term(there, billet.places().get(0).span().min()),
                    LinearExpr.term(there, billet.places().get(0).span().max()), standing, placed);
        }
        standing.forEach((id, count) -> model.addEquality(count, placed.computeIfAbsent(id, any -> LinearExpr.newBuilder())));
    }

    private void place(Places places, LinearExpr min, LinearExpr max, Map<Id, LinearExprBuilder> standing,
            Map<Id, LinearExprBuilder> placed) {
        LinearExprBuilder all = LinearExpr.newBuilder();
        for (Id id : standing.keySet()) {
            if (places.of().contains(id)) {
                IntVar here = model.newIntVar(0, MOST * MOST, "here");
                placed.computeIfAbsent(id, any -> LinearExpr.newBuilder()).add(here);
                all.add(here);
            }
        }
        model.addGreaterOrEqual(all, min);
        model.addLessOrEqual(all, max);
    }

    /** One written unit: it stays, goes, changes its strength, or its successor comes. */
    private void copy(Entry entry, BoolVar there, Map<Id, LinearExprBuilder> standing) {
        Unit unit = unit(entry.what());
        int strength = entry.strength().getAsInt();
        long old = strengths(unit, trial.written()).get(strength);
        LinearExprBuilder fates = LinearExpr.newBuilder();
        if (available(unit)) {
            long now = strengths(unit, era).get(strength);
            strengths(unit, era).forEach((other, points) -> fate(fates, unit, points,
                    other == strength ? 0 : Math.abs(points - now) * UNITS + 1, standing));
        } else {
            for (Successor line : unit.facts(Successor.class)) {
                Unit next = unit(line.unit());
                strengths(next, era).forEach((other, points) -> {
                    if (available(next)) {
                        fate(fates, next, points, line.difference() ? Math.abs(points - old) * UNITS + 1
                                : (points + old) * UNITS + 2, standing);
                    }
                });
            }
        }
        BoolVar gone = model.newBoolVar("gone");
        fates.add(gone);
        cost.addTerm(gone, old * UNITS + 1);
        model.addEquality(fates, 1);
        // What stood in a formation that is gone is gone, too.
        model.addGreaterOrEqual(LinearExpr.sum(new BoolVar[] {gone, there}), 1);
    }

    private void fate(LinearExprBuilder fates, Unit unit, long points, long price, Map<Id, LinearExprBuilder> standing) {
        BoolVar fate = model.newBoolVar("fate");
        fates.add(fate);
        cost.addTerm(fate, price);
        LinearExprBuilder one = LinearExpr.newBuilder().add(fate);
        standing.computeIfAbsent(unit.id(), any -> LinearExpr.newBuilder()).add(one);
        sum(unit, "count").add(fate);
        sum(unit, "points").addTerm(fate, points);
        used.addTerm(fate, points);
    }

    private void count(Unit unit, long points, IntVar many, Map<Id, LinearExprBuilder> standing) {
        standing.computeIfAbsent(unit.id(), any -> LinearExpr.newBuilder()).add(many);
        sum(unit, "count").add(many);
        sum(unit, "points").addTerm(many, points);
        used.addTerm(many, points);
    }

    private LinearExprBuilder sum(Unit unit, String what) {
        return sums.computeIfAbsent(unit.id(), any -> new HashMap<>()).computeIfAbsent(what,
                any -> LinearExpr.newBuilder());
    }

    private void supports() {
        Support support = trial.book().supports().get(0);
        Places places = support.places().get(0);
        Map<Id, LinearExprBuilder> standing = new TreeMap<>();
        for (Unit unit : trial.book().units()) {
            if (available(unit) && takes(places, unit)) {
                strengths(unit, era).forEach((strength, points) -> {
                    IntVar more = model.newIntVar(0, MOST, "support");
                    count(unit, points, more, standing);
                    cost.addTerm(more, points * UNITS + 1);
                });
            }
        }
        LinearExprBuilder all = LinearExpr.newBuilder();
        standing.values().forEach(all::add);
        LinearExprBuilder room = LinearExpr.newBuilder().addTerm(formations, places.span().max());
        model.addLessOrEqual(all, room);
    }

    private void limit(Limit limit) {
        for (Bound bound : limit.facts(Bound.class)) {
            LinearExprBuilder value = LinearExpr.newBuilder();
            String what = bound.measure() == Measure.COUNT ? "count" : "points";
            long scale = bound.measure() == Measure.COUNT ? 1 : 100;
            bound.of().forEach(id -> value.addTerm(sum(unit(id), what), scale));
            Span span = bound.span();
            if (bound.measure() == Measure.PERCENT_OF_USED) {
                model.addLessOrEqual(value, LinearExpr.newBuilder().addTerm(used, span.max()));
                model.addGreaterOrEqual(value, LinearExpr.newBuilder().addTerm(used, span.min()));
                continue;
            }
            long base = bound.measure() == Measure.COUNT ? 1 : trial.points();
            model.addGreaterOrEqual(value, span.min() * base);
            if (span.bounded()) {
                model.addLessOrEqual(value, span.max() * base);
            }
        }
    }

    private static boolean takes(Places places, Unit unit) {
        return places.of().contains(unit.id());
    }

    private Unit unit(Id id) {
        return trial.book().units().stream().filter(unit -> unit.id().equals(id)).findFirst().orElseThrow();
    }

    private boolean available(Unit unit) {
        List<Availability> lines = unit.facts(Availability.class);
        return lines.isEmpty() || lines.stream().anyMatch(line -> reach(line.when(), era) >= 0);
    }

    /** The points of each strength: of lines that say the same, the one that begins last holds. */
    private Map<Integer, Long> strengths(Unit unit, int at) {
        Map<Integer, Long> points = new TreeMap<>();
        Map<Integer, Integer> begins = new HashMap<>();
        for (Strength line : unit.facts(Strength.class)) {
            int begin = reach(line.when(), at);
            if (begin >= begins.getOrDefault(line.from(), 0)) {
                begins.put(line.from(), begin);
                points.put(line.from(), (long) line.cost().points());
            }
        }
        return points;
    }

    /** From which era on a line holds that holds in an era of this number; -1 if it does not. */
    private int reach(Validity when, int at) {
        int begin = 0;
        for (When condition : when.conditions()) {
            Reach reach = (Reach) condition;
            int from = reach.from().map(moment -> number(((OfEra) moment).era())).orElse(0);
            int to = reach.to().map(moment -> number(((OfEra) moment).era())).orElse(Integer.MAX_VALUE);
            if (at < from || at > to) {
                return -1;
            }
            begin = Math.max(begin, from);
        }
        return begin;
    }

    private int number(Id id) {
        return trial.eras().indexOf(id);
    }
}
