package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.buying.plan.Bench;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Work;
import org.cantonment.buying.solve.Column;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.shelf.BenchTime.Measure;
import org.cantonment.stock.supply.Way;

/**
 * What is built at the bench, and that it is no more than there is time for. What is glued takes its time in the stage in
 * which it is built. What comes loose at the bench takes it whenever more stand built in a way than in the stage before;
 * what comes loose between games takes it once, when it is built for the first time.
 */
final class BenchRows {

    private final Question question;
    private final List<Pool> pools;
    private final Purchases purchases;
    private final List<Wants> wants;
    /** By pool, way, and stage or target. */
    private final int[][][] built;
    private final BuildTimes times;
    private final ProgrammeMaker maker;
    /** What is built for the first time, by pool and stage; none for pools that are not built anew for each target. */
    private final int[][] first;
    private final Map<Integer, Long> counted = new TreeMap<>();
    private int more = Formulation.NONE;

    BenchRows(Question question, List<Pool> pools, Purchases purchases, List<Wants> wants, int[][][] built, BuildTimes times,
            ProgrammeMaker maker) {
        this.question = question;
        this.pools = pools;
        this.purchases = purchases;
        this.wants = wants;
        this.built = built;
        this.times = times;
        this.maker = maker;
        first = new int[pools.size()][];
    }

    /** @param helped the stage that may have more than its time; {@link Formulation#NONE} for none */
    void add(int helped) {
        for (int p = 0; p < built.length; p++) {
            if (between(pools.get(p))) {
                first(p);
            }
        }
        more = helped < 0 ? Formulation.NONE : maker.column("more at the bench in " + helped, 0, 0, Column.MOST, 0);
        for (int s = 0; s < question.stages().size(); s++) {
            Sum sum = new Sum();
            if (question.stages().get(s).bench().isPresent()) {
                Bench bench = question.stages().get(s).bench().get();
                for (int p = 0; p < built.length; p++) {
                    weigh(p, s, bench.measure(), sum);
                }
                maker.atMost(s == helped ? new Sum().add(1, sum).add(-1, more) : sum, bench.most());
            }
        }
    }

    private static boolean between(Pool pool) {
        return pool.fixing() == Fixing.LOOSE_BETWEEN_GAMES;
    }

    private boolean built(Pool pool, Way way) {
        return times.built(pool.part(), way.build());
    }

    private static int ready(Pool pool) {
        return pool.ready().values().stream().mapToInt(Integer::intValue).sum();
    }

    private void first(int p) {
        Pool pool = pools.get(p);
        first[p] = new int[question.stages().size()];
        for (int s = 0; s < first[p].length; s++) {
            first[p][s] = maker.column(pool.part() + " built for the first time in " + s, 0, 0, Purchases.MANY, 1);
        }
        Sum ever = new Sum();
        for (int s = 0; s < first[p].length; s++) {
            ever.add(-1, first[p][s]);
            Sum unbuilt = new Sum().add(1, ever);
            purchases.addParts(pool, s, unbuilt);
            maker.atLeast(unbuilt, ready(pool) - pool.own());
        }
        for (int t = 0; t < wants.size(); t++) {
            Sum there = new Sum();
            for (int s = 0; s <= wants.get(t).target().stage(); s++) {
                there.add(1, first[p][s]);
            }
            for (int w = 0; w < built[p].length; w++) {
                if (built(pool, pool.ways().get(w))) {
                    there.add(-1, built[p][w][t]);
                }
            }
            maker.atLeast(there, -ready(pool));
        }
    }

    private void weigh(int p, int stage, Measure measure, Sum sum) {
        Pool pool = pools.get(p);
        if (between(pool)) {
            count(times.weight(measure, pool.part()), first[p][stage], sum);
            return;
        }
        for (int w = 0; w < built[p].length; w++) {
            Way way = pool.ways().get(w);
            if (built(pool, way)) {
                count(times.weight(measure, pool.part(), way.build()), pool.fixing() == Fixing.GLUED ? built[p][w][stage]
                        : rebuilt(p, w, stage), sum);
            }
        }
    }

    private void count(long weight, int column, Sum sum) {
        sum.add(weight, column);
        counted.put(column, weight);
    }

    /** A column for how many more stand in a way than before. */
    private int rebuilt(int p, int w, int stage) {
        Pool pool = pools.get(p);
        Id build = pool.ways().get(w).build();
        int column = maker.column(pool.part() + " rebuilt as " + build + " in " + stage, 0, 0, Purchases.MANY, 1);
        Sum more = new Sum().add(1, column).add(-1, built[p][w][stage]);
        if (stage > 0) {
            more.add(1, built[p][w][stage - 1]);
        }
        maker.atLeast(more, stage > 0 ? 0 : -pool.ready().getOrDefault(build, 0));
        return column;
    }

    /** The column of what is lacking at the bench of the stage that is helped. */
    int more() {
        return more;
    }

    /** Marks each column that is work with how much of it one is: what takes no time that is known is work all the same. */
    void weigh(long[] into) {
        counted.forEach((column, weight) -> into[column] = Math.max(1, weight));
    }

    /** The columns that are work. */
    Set<Integer> counted() {
        return counted.keySet();
    }

    /** How many of a pool that is rebuilt between games are built by a stage; empty where that is not counted. */
    OptionalLong built(int p, int stage, long[] values) {
        return first[p] == null ? OptionalLong.empty()
                : OptionalLong.of(ready(pools.get(p)) + Arrays.stream(first[p], 0, stage + 1).mapToLong(column -> values[column]).sum());
    }

    /** What is built in each stage; what is rebuilt between games only if it is counted. */
    List<Work> read(long[] values) {
        List<Work> stages = new ArrayList<>();
        for (int s = 0; s < question.stages().size(); s++) {
            Work sum = Work.NONE;
            for (int p = 0; p < built.length; p++) {
                Pool pool = pools.get(p);
                if (between(pool)) {
                    sum = first[p] == null ? sum : sum.plus(Work.of(pool.part(), values[first[p][s]], times.longest(pool.part())));
                    continue;
                }
                for (int w = 0; w < built[p].length; w++) {
                    Id build = pool.ways().get(w).build();
                    if (times.built(pool.part(), build)) {
                        sum = sum.plus(Work.of(pool.part(), newly(p, w, s, values), times.minutes(pool.part(), build)));
                    }
                }
            }
            stages.add(sum);
        }
        return stages;
    }

    private long newly(int p, int w, int stage, long[] values) {
        long now = values[built[p][w][stage]];
        if (pools.get(p).fixing() == Fixing.GLUED) {
            return now;
        }
        long before = stage > 0 ? values[built[p][w][stage - 1]]
                : pools.get(p).ready().getOrDefault(pools.get(p).ways().get(w).build(), 0);
        return Math.max(0, now - before);
    }
}
