package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.formulate.BuildKey;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/**
 * What is built of parts. What is glued stays for all later stages; what comes loose at the bench is built anew for each
 * stage, and what comes loose between games for each target.
 */
final class Builds {

    private final Question question;
    private final Stores stores;
    private final Purchases purchases;
    private final List<Wants> wants;
    private final ProgrammeMaker maker;
    /** By pool, way, and stage or target. */
    private final int[][][] columns;
    private final BenchRows bench;

    /** @param helped the stage that may have more than its time at the bench; {@link Formulation#NONE} for none */
    Builds(Question question, Stores stores, Purchases purchases, List<Wants> wants, BuildTimes times, int helped,
            ProgrammeMaker maker) {
        this.question = question;
        this.stores = stores;
        this.purchases = purchases;
        this.wants = wants;
        this.maker = maker;
        columns = new int[stores.pools().size()][][];
        for (int p = 0; p < columns.length; p++) {
            lay(p, stores.pools().get(p));
        }
        bench = new BenchRows(question, stores.pools(), purchases, wants, columns, times, maker);
        if (question.benched()) {
            bench.add(helped);
        }
        for (int r = 0; r < stores.rooms().size(); r++) {
            cap(r, stores.rooms().get(r));
        }
    }

    private static boolean anew(Pool pool) {
        return pool.fixing() == Fixing.LOOSE_BETWEEN_GAMES;
    }

    private int times(Pool pool) {
        return anew(pool) ? wants.size() : question.stages().size();
    }

    private int stage(Pool pool, int time) {
        return anew(pool) ? wants.get(time).target().stage() : time;
    }

    /** The first time whose builds still stand at a time. */
    private static int since(Pool pool, int time) {
        return pool.fixing() == Fixing.GLUED ? 0 : time;
    }

    private void lay(int p, Pool pool) {
        columns[p] = new int[pool.ways().size()][times(pool)];
        for (int w = 0; w < columns[p].length; w++) {
            for (int time = 0; time < columns[p][w].length; time++) {
                columns[p][w][time] = maker.column(pool.part() + " as " + pool.ways().get(w).build() + " at " + time, 0, 0,
                        Purchases.MANY, 1);
            }
        }
        for (int time = 0; time < times(pool); time++) {
            Sum left = new Sum();
            purchases.addParts(pool, stage(pool, time), left);
            for (int since = since(pool, time); since <= time; since++) {
                for (int[] way : columns[p]) {
                    left.add(-1, way[since]);
                }
            }
            maker.atLeast(left, -pool.own());
        }
    }

    /** What is built at the bench. */
    BenchRows bench() {
        return bench;
    }

    /** Where a pool under the cap is built anew for each target, the cap holds for each target, else for each stage. */
    private void cap(int number, Room room) {
        List<Integer> under = new ArrayList<>();
        for (int p = 0; p < columns.length; p++) {
            if (stores.pools().get(p).room().contains(number)) {
                under.add(p);
            }
        }
        boolean byTarget = under.stream().anyMatch(p -> anew(stores.pools().get(p)));
        for (int time = 0; !under.isEmpty() && time < (byTarget ? wants.size() : question.stages().size()); time++) {
            int stage = byTarget ? wants.get(time).target().stage() : time;
            Sum left = new Sum();
            for (int p : under) {
                take(p, room, anew(stores.pools().get(p)) ? time : stage, left);
            }
            if (room.ware() >= 0) {
                purchases.addWare(room.ware(), room.each(), stage, left);
            }
            maker.atLeast(left, -room.own());
        }
    }

    private void take(int p, Room room, int time, Sum left) {
        Pool pool = stores.pools().get(p);
        for (int w = 0; w < pool.ways().size(); w++) {
            int counts = counts(room, pool.ways().get(w));
            for (int since = since(pool, time); since <= time && counts > 0; since++) {
                left.add(-counts, columns[p][w][since]);
            }
        }
    }

    private static int counts(Room room, Way way) {
        int pieces = Stores.weight(way, room.of());
        return room.weight() > 0 ? Integer.signum(pieces) : pieces;
    }

    /** Adds what is built of a type and stands in a stage. */
    void add(Id type, int stage, int target, Sum into) {
        for (int p : stores.giving(type)) {
            Pool pool = stores.pools().get(p);
            int time = anew(pool) ? target : stage;
            for (int w = 0; time >= 0 && w < columns[p].length; w++) {
                int gives = pool.ways().get(w).yields().getOrDefault(type, 0);
                for (int since = since(pool, time); gives > 0 && since <= time; since++) {
                    into.add(gives, columns[p][w][since]);
                }
            }
        }
    }

    boolean give(Id type) {
        return !stores.giving(type).isEmpty();
    }

    boolean givenAnew(Id type) {
        return stores.giving(type).stream().anyMatch(p -> anew(stores.pools().get(p)));
    }

    List<Map<BuildKey, Long>> read(long[] values) {
        List<Map<BuildKey, Long>> stages = new ArrayList<>();
        for (int s = 0; s < question.stages().size(); s++) {
            Map<BuildKey, Long> built = new TreeMap<>();
            for (int p = 0; p < columns.length; p++) {
                Pool pool = stores.pools().get(p);
                for (int w = 0; !anew(pool) && w < columns[p].length; w++) {
                    if (values[columns[p][w][s]] > 0) {
                        built.merge(new BuildKey(pool, pool.ways().get(w)), values[columns[p][w][s]], Long::sum);
                    }
                }
            }
            stages.add(built);
        }
        return stages;
    }

    /** What is built for one target alone, of what comes loose between games. */
    Map<BuildKey, Long> readAnew(long[] values, int target) {
        Map<BuildKey, Long> built = new TreeMap<>();
        for (int p = 0; p < columns.length; p++) {
            Pool pool = stores.pools().get(p);
            for (int w = 0; anew(pool) && w < columns[p].length; w++) {
                if (values[columns[p][w][target]] > 0) {
                    built.merge(new BuildKey(pool, pool.ways().get(w)), values[columns[p][w][target]], Long::sum);
                }
            }
        }
        return built;
    }

    /** What lies there for a target and comes loose between games, with what the caps leave for it beside what else is built. */
    Supply loose(long[] values, int target) {
        int stage = wants.get(target).target().stage();
        List<Frames> loose = new ArrayList<>();
        Map<Integer, Integer> places = new TreeMap<>();
        for (int p = 0; p < columns.length; p++) {
            Pool pool = stores.pools().get(p);
            Sum parts = new Sum();
            purchases.addParts(pool, stage, parts);
            int count = (int) Math.min(Purchases.MANY, bench.built(p, stage, values).orElse(parts.value(values) + pool.own()));
            if (anew(pool) && count > 0) {
                places.put(p, loose.size());
                loose.add(new Frames(pool.part(), count, false, pool.ways(), -1, pool.fixing()));
            }
        }
        List<BoxCap> caps = new ArrayList<>();
        for (int r = 0; r < stores.rooms().size(); r++) {
            int number = r;
            List<Integer> under = places.keySet().stream().filter(p -> stores.pools().get(p).room().contains(number)).toList();
            if (!under.isEmpty()) {
                caps.add(new BoxCap(stores.pools().get(under.get(0)).part(), most(r, stage, values), stores.rooms().get(r).of(),
                        under.stream().map(places::get).toList()));
            }
        }
        return new Supply(List.of(), loose, caps, List.of());
    }

    /** How many pieces a cap leaves for what comes loose between games. */
    private int most(int number, int stage, long[] values) {
        Room room = stores.rooms().get(number);
        Sum left = new Sum();
        for (int p = 0; p < columns.length; p++) {
            Pool pool = stores.pools().get(p);
            if (pool.room().contains(number) && !anew(pool)) {
                take(p, room, stage, left);
            }
        }
        if (room.ware() >= 0) {
            purchases.addWare(room.ware(), room.each(), stage, left);
        }
        return (int) Math.max(0, Math.min(Purchases.MANY, (left.value(values) + room.own()) * Math.max(1, room.weight())));
    }

    /** The columns of what is built and not taken apart after one target, and of whatever is work where that counts. */
    Set<Integer> lasting() {
        Set<Integer> lasting = new TreeSet<>(bench.counted());
        for (int p = 0; p < columns.length; p++) {
            Pool pool = stores.pools().get(p);
            for (int w = 0; !anew(pool) && w < columns[p].length; w++) {
                Arrays.stream(columns[p][w]).forEach(lasting::add);
            }
        }
        return lasting;
    }
}
