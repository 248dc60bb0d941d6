package org.cantonment.stock.tests;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The best there is, by trying everything: each frame built each way or not at all, each conversion each number of times,
 * each type with each meaning, and then one piece after another put wherever it may go.
 */
final class Enumeration {

    private static final long FILLED = 1_000_000;
    private static final long[] TRUTH = {10_000, 100, 1, 0};

    private final Case of;
    private final int[] there;
    /** Of those, what may be worked over: not what comes loose between games. */
    private final int[] spare;
    private final int[] converted;
    private final int[] lineMost;
    private long best;

    Enumeration(Case of) {
        this.of = of;
        there = of.built.clone();
        spare = of.built.clone();
        converted = new int[of.types];
        lineMost = new int[of.lines.size()];
        for (int l = 0; l < lineMost.length; l++) {
            int asked = 0;
            for (int n = 0; n < of.needs.size(); n++) {
                asked += serves(l, n) ? of.needs.get(n).count() : 0;
            }
            lineMost[l] = asked * of.lines.get(l).percent() / 100;
        }
    }

    /** Filled, exact, kindred and stand-ins of the best turnout. */
    long[] best() {
        build(0, 0, 0);
        return new long[] {best / FILLED, best % FILLED / 10_000, best % 10_000 / 100, best % 100};
    }

    private boolean serves(int line, int need) {
        return of.exact(of.lines.get(line).standsFor(), need) && of.truth(of.lines.get(line).what(), need) == 2;
    }

    private void turn(int at) {
        if (at == of.turnings.size()) {
            mean();
            return;
        }
        Case.Turning turning = of.turnings.get(at);
        turn(at + 1);
        int times = 0;
        while (times < turning.times() && IntStream.rangeClosed(0, of.types).allMatch(t -> turning.takes().get(t) <= spare[t])) {
            times++;
            work(turning, 1);
            turn(at + 1);
        }
        for (; times > 0; times--) {
            work(turning, -1);
        }
    }

    private void work(Case.Turning turning, int sign) {
        for (int t = 0; t <= of.types; t++) {
            there[t] -= sign * turning.takes().get(t);
            spare[t] -= sign * turning.takes().get(t);
        }
        converted[turning.to()] += sign * turning.gives();
    }

    private void build(int lot, int frame, int capped) {
        if (lot == of.lots.size()) {
            turn(0);
            return;
        }
        Case.Lot one = of.lots.get(lot);
        if (frame == one.frames()) {
            build(lot + 1, 0, 0);
            return;
        }
        build(lot, frame + 1, capped);
        for (int[] way : one.ways()) {
            int more = one.cappedType() < 0 ? 0 : way[one.cappedType()];
            if (one.cappedType() < 0 || capped + more <= one.cap()) {
                add(way, 1, one.loose());
                build(lot, frame + 1, capped + more);
                add(way, -1, one.loose());
            }
        }
    }

    private void add(int[] way, int sign, boolean loose) {
        for (int t = 0; t < way.length; t++) {
            there[t] += sign * way[t];
            spare[t] += loose ? 0 : sign * way[t];
        }
    }

    private void mean() {
        for (int meanings = 0; meanings < (of.oneTable ? 1 << of.types : 1); meanings++) {
            Map<List<Integer>, Long> values = new HashMap<>();
            values.put(start(), 0L);
            for (int t = 0; t < of.types; t++) {
                boolean others = (meanings >> t & 1) == 1;
                for (int i = 0; i < there[t]; i++) {
                    values = put(values, t, false, others);
                }
                for (int i = 0; i < converted[t] && !others; i++) {
                    values = put(values, t, true, false);
                }
            }
            best = Math.max(best, values.values().stream().mapToLong(Long::longValue).max().orElse(0));
        }
    }

    /** What each need still asks for, then what each line still allows. */
    private List<Integer> start() {
        List<Integer> start = new ArrayList<>();
        of.needs.forEach(need -> start.add(need.count()));
        for (int most : lineMost) {
            start.add(most);
        }
        return start;
    }

    private Map<List<Integer>, Long> put(Map<List<Integer>, Long> values, int type, boolean turned, boolean others) {
        Map<List<Integer>, Long> after = new HashMap<>(values);
        values.forEach((state, value) -> {
            for (int n = 0; n < of.needs.size(); n++) {
                int truth = of.truth(type, n);
                boolean may = turned ? truth == 0 : truth < 3 && (!of.oneTable || (truth == 0) != others);
                if (!may || state.get(n) == 0) {
                    continue;
                }
                for (int l = truth == 2 ? 0 : -1; l < (truth == 2 ? lineMost.length : 0); l++) {
                    if (l >= 0 && (of.lines.get(l).what() != type || !serves(l, n) || left(state, l) == 0)) {
                        continue;
                    }
                    List<Integer> next = new ArrayList<>(state);
                    next.set(n, next.get(n) - 1);
                    if (l >= 0) {
                        next.set(of.needs.size() + l, left(state, l) - 1);
                    }
                    after.merge(next, value + FILLED + TRUTH[turned ? 3 : truth], Math::max);
                }
            }
        });
        return after;
    }

    private int left(List<Integer> state, int line) {
        return state.get(of.needs.size() + line);
    }
}
