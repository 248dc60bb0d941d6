package org.cantonment.buying.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;

/**
 * Branch and bound. From a place it goes on to one of the two places that a branching makes, and when that leads nowhere to
 * the youngest open place, and now and then to the one with the least bound.
 */
final class Search {

    /** How it is searched. */
    enum Mode {
        /** Cuts first. */
        CUTTING,
        /** Stops at the first values that hold. */
        FIRST
    }

    private static final double WHOLE = 1e-6;
    private static final int CUT_ROUNDS = 20;
    /** Of so many places that it goes back to, all but one are the youngest: what lies near takes few exchanges. */
    private static final int NEAR = 9;

    private final Programme programme;
    private final List<Column> columns;
    private final int n;
    private final Tableau tableau;
    private final DualSimplex simplex;
    private final SafeBound safe;
    private final Branching branching;
    private final Limits limits;
    private final CancelToken cancel;
    private final Progress progress;
    private final OpenPlaces open = new OpenPlaces();
    private final long step;
    private final long[] rootLower;
    private final long[] rootUpper;
    private final long[] lower;
    private final long[] upper;
    private final double[] values;

    private long[] best;
    private long bestCost = Long.MAX_VALUE;
    private long bound = Long.MIN_VALUE;
    private long nodes;
    private long numbers;
    private boolean stopped;
    private int returns;
    private final Mode mode;
    private double[] rootWeights;

    Search(Programme programme, long[] start, Mode mode, Limits limits, CancelToken cancel, Progress progress) {
        this.programme = programme;
        this.mode = mode;
        columns = programme.columns();
        n = columns.size();
        this.limits = limits;
        this.cancel = cancel;
        this.progress = progress;
        tableau = new Tableau(programme);
        simplex = new DualSimplex(tableau, cancel);
        safe = new SafeBound(columns);
        branching = new Branching(columns, tableau);
        step = Math.max(1, columns.stream().mapToLong(Column::cost).reduce(0, Search::gcd));
        rootLower = columns.stream().mapToLong(Column::lower).toArray();
        rootUpper = columns.stream().mapToLong(Column::upper).toArray();
        lower = rootLower.clone();
        upper = rootUpper.clone();
        values = new double[n];
        if (start != null) {
            best = start.clone();
            bestCost = programme.cost(start);
        }
    }

    static long gcd(long a, long b) {
        return b == 0 ? Math.abs(a) : gcd(b, a % b);
    }

    Outcome run() {
        Place place = begin();
        while (place != null && !stopped) {
            place = visit(place);
            if (place == null && !stopped) {
                place = next();
            }
            if (place != null && nodes % 256 == 0) {
                progress.at(nodes, 0, "searching");
            }
        }
        if (stopped) {
            return new Outcome(Outcome.State.STOPPED, best, bestCost, Math.min(open.least(bound), bestCost), nodes,
                    tableau.pivots(), false);
        }
        return new Outcome(best == null ? Outcome.State.IMPOSSIBLE : Outcome.State.PROVEN, best, bestCost, bestCost,
                nodes, tableau.pivots(), true);
    }

    /** Looks at the first place only. */
    Outcome root() {
        Place place = begin();
        if (place != null) {
            visit(place);
        }
        return new Outcome(Outcome.State.STOPPED, best, bestCost, Math.min(open.least(bound), bestCost), nodes,
                tableau.pivots(), false);
    }

    /** The programme with its bounds narrowed to values that can cost so much at the most. */
    Programme narrowed(long most) {
        long[] low = rootLower.clone();
        long[] high = rootUpper.clone();
        if (rootWeights != null && safe.reckon(tableau, rootWeights, low, high)) {
            safe.narrow(most, low, high);
        }
        List<Column> narrow = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            Column column = columns.get(j);
            narrow.add(new Column(column.name(), column.cost(), low[j], high[j], column.rank()));
        }
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < tableau.rows(); i++) {
            rows.add(tableau.row(i));
        }
        return new Programme(narrow, rows);
    }

    private Place begin() {
        for (int j = 0; j < n; j++) {
            if (lower[j] > upper[j]) {
                return null;
            }
        }
        return new Place(null, new int[0], new long[0], new long[0], Long.MIN_VALUE, 0, numbers++, -1, false, 0, 0);
    }

    private Place next() {
        while (!open.isEmpty()) {
            Place place = best == null || ++returns % NEAR != 0 || open.size() > limits.places() ? open.youngest() : open.best();
            if (place.bound() < bestCost) {
                enter(place);
                return place;
            }
        }
        return null;
    }

    /** Moves all bounds to where they are in a place. */
    private void enter(Place place) {
        System.arraycopy(rootLower, 0, lower, 0, n);
        System.arraycopy(rootUpper, 0, upper, 0, n);
        for (Place at = place; at != null; at = at.parent()) {
            for (int k = 0; k < at.columns().length; k++) {
                int j = at.columns()[k];
                lower[j] = Math.max(lower[j], at.lower()[k]);
                upper[j] = Math.min(upper[j], at.upper()[k]);
            }
        }
    }

    /** Looks at a place; gives the one to go on with, or null if it is done with. */
    private Place visit(Place place) {
        if (nodes == 0 && mode == Mode.CUTTING) {
            cut();
        }
        nodes++;
        bound = open.isEmpty() ? place.bound() : Math.min(place.bound(), open.least(place.bound()));
        for (int j = 0; j < n; j++) {
            if (lower[j] > upper[j]) {
                return null;
            }
            tableau.lower[j] = lower[j];
            tableau.upper[j] = upper[j];
        }
        double beyond = bestCost == Long.MAX_VALUE ? Double.POSITIVE_INFINITY : bestCost - step + 1e-3 * step;
        DualSimplex.End end = simplex.run(beyond, 20_000);
        if (cancel.cancelled() || tableau.pivots() + nodes > limits.pivots()) {
            stopped = true;
            open.add(left(place));
            return null;
        }
        long known = place.bound();
        if (end == DualSimplex.End.IMPOSSIBLE) {
            if (safe.refutes(tableau, RowWeights.ray(tableau, simplex), lower, upper)) {
                return null;
            }
        } else {
            double[] weights = RowWeights.duals(tableau);
            if (place.depth() == 0) {
                rootWeights = weights;
            }
            if (safe.reckon(tableau, weights, lower, upper)) {
                known = Math.max(known, safe.roundedUp(step));
            }
            if (known >= bestCost) {
                return null;
            }
            if (end == DualSimplex.End.OPTIMAL) {
                branching.learn(place, tableau.objective());
                read();
                if (whole() && accept()) {
                    if (known >= bestCost) {
                        return null;
                    }
                }
            }
        }
        return branch(place, known, end == DualSimplex.End.OPTIMAL);
    }

    /** A place that is left before it was looked at to the end, with what is known by then. */
    private Place left(Place place) {
        long known = place.bound();
        if (safe.reckon(tableau, RowWeights.duals(tableau), lower, upper)) {
            known = Math.max(known, safe.roundedUp(step));
        }
        return new Place(place.parent(), place.columns(), place.lower(), place.upper(), known, place.depth(), place.number(),
                place.branched(), place.up(), place.share(), place.estimate());
    }

    /** Adds cuts as long as they raise the bound, then takes out those that bear nothing. */
    private void cut() {
        List<Row> cuts = new ArrayList<>();
        double before = Double.NEGATIVE_INFINITY;
        int stale = 0;
        for (int round = 0; round < CUT_ROUNDS && stale < 3; round++) {
            move();
            if (simplex.run(Double.POSITIVE_INFINITY, 20_000) != DualSimplex.End.OPTIMAL) {
                break;
            }
            stale = tableau.objective() < before + 1e-3 * Math.max(step, Math.abs(before) * 0.01) ? stale + 1 : 0;
            before = tableau.objective();
            read();
            if (whole() || tableau.pivots() > limits.pivots()) {
                break;
            }
            List<Row> more = new RoundingCuts(tableau, lower, upper, values).find(cancel);
            if (more.isEmpty()) {
                break;
            }
            cuts.addAll(more);
            tableau.add(more);
        }
        if (!cuts.isEmpty() && !cancel.cancelled()) {
            keepBearing(cuts);
        }
    }

    private void keepBearing(List<Row> cuts) {
        Set<Row> bearing = new HashSet<>();
        double[] weights = RowWeights.duals(tableau);
        for (int i = 0; i < tableau.rows(); i++) {
            if (weights[i] > 1e-9) {
                bearing.add(tableau.row(i));
            }
        }
        List<Row> rows = new ArrayList<>(programme.rows());
        cuts.stream().distinct().filter(bearing::contains).forEach(rows::add);
        tableau.begin(rows);
    }

    private void move() {
        for (int j = 0; j < n; j++) {
            tableau.lower[j] = lower[j];
            tableau.upper[j] = upper[j];
        }
    }

    private void read() {
        for (int j = 0; j < n; j++) {
            int variable = tableau.outside[j];
            if (variable < n) {
                values[variable] = tableau.at(j);
            }
        }
        for (int i = 0; i < tableau.rows(); i++) {
            if (tableau.basic[i] < n) {
                values[tableau.basic[i]] = tableau.value[i];
            }
        }
    }

    private boolean whole() {
        for (double value : values) {
            if (Math.abs(value - Math.rint(value)) > WHOLE) {
                return false;
            }
        }
        return true;
    }

    /** Keeps the values, rounded, if they hold in whole numbers and cost less than the best so far. */
    private boolean accept() {
        long[] rounded = new long[n];
        for (int j = 0; j < n; j++) {
            rounded[j] = Math.round(values[j]);
        }
        if (!programme.holds(rounded)) {
            return false;
        }
        long cost = programme.cost(rounded);
        if (cost < bestCost) {
            best = rounded;
            bestCost = cost;
            stopped |= mode == Mode.FIRST;
        }
        return true;
    }

    private Place branch(Place place, long known, boolean solved) {
        long[] narrowLower = lower.clone();
        long[] narrowUpper = upper.clone();
        if (solved && bestCost != Long.MAX_VALUE) {
            safe.narrow(bestCost - step, narrowLower, narrowUpper);
        }
        Place here = moved(place, narrowLower, narrowUpper, known);
        Branching.Choice choice = solved ? branching.choose(values, lower, upper) : null;
        if (choice == null) {
            choice = Branching.halve(lower, upper);
            if (choice == null) {
                Arrays.setAll(values, j -> lower[j]);
                accept();
                return null;
            }
        }
        int j = choice.column();
        Place down = child(here, known, j, lower[j], choice.below(), false, choice.share());
        Place up = child(here, known, j, choice.below() + 1, upper[j], true, 1 - choice.share());
        Place go = choice.upFirst() ? up : down;
        open.add(choice.upFirst() ? down : up);
        enter(go);
        return go;
    }

    private Place moved(Place place, long[] narrowLower, long[] narrowUpper, long known) {
        int count = 0;
        for (int j = 0; j < n; j++) {
            if (narrowLower[j] != lower[j] || narrowUpper[j] != upper[j]) {
                count++;
            }
        }
        if (count == 0) {
            return place;
        }
        int[] which = new int[count];
        long[] low = new long[count];
        long[] high = new long[count];
        int k = 0;
        for (int j = 0; j < n; j++) {
            if (narrowLower[j] != lower[j] || narrowUpper[j] != upper[j]) {
                which[k] = j;
                low[k] = narrowLower[j];
                high[k++] = narrowUpper[j];
            }
        }
        System.arraycopy(narrowLower, 0, lower, 0, n);
        System.arraycopy(narrowUpper, 0, upper, 0, n);
        return new Place(place, which, low, high, known, place.depth(), place.number(), -1, false, 0, 0);
    }

    private Place child(Place parent, long known, int column, long low, long high, boolean up, double share) {
        return new Place(parent, new int[] {column}, new long[] {low}, new long[] {high}, known, parent.depth() + 1,
                numbers++, column, up, share, tableau.objective());
    }
}
