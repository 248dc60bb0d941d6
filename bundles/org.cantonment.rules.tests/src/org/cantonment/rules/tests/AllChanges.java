package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.some;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.tests.SmallCase.Kit;
import org.cantonment.rules.tests.SmallCase.Squad;
import org.cantonment.rules.tests.SmallCase.Written;

/**
 * Goes through every change of a small case that costs no more than so much, one choice after the other, and judges each
 * list. Knows nothing of the search: it counts points and units from what is said of them alone.
 */
final class AllChanges {

    private static final int TOP = -1;
    private static final int FRESH = -2;

    /** What one unit of the changed list is: where it stands, and how it is taken. */
    private record Stand(int place, int unit, int strength, int options, String pin) {
    }

    /** So many that are put in, each for the points of one that goes if only the difference counts, else for nothing. */
    private record Put(Stand stand, int weight, boolean difference, long old) {
    }

    /** One of a written entry. */
    private record Copy(int squad, int number, Written row) {
    }

    /** The best of all: points, units, where they stand; and all lists that come to that. */
    static final class Best {
        long moved = Long.MAX_VALUE;
        long units;
        int[] positions = {};
        final List<String> lists = new ArrayList<>();
    }

    private final SmallCase small;
    private final Fielding fielding;
    private final long mostMoved;
    private final int mostUnits;
    private final int mostLists;
    private final List<Put> puts = new ArrayList<>();
    private final List<Copy> copies = new ArrayList<>();
    private final List<Integer> ends = new ArrayList<>();
    private final List<Integer> starts = new ArrayList<>();
    private final int[] squadsLeft;
    private final List<Stand> stands = new ArrayList<>();
    private final List<int[]> touches = new ArrayList<>();
    private final int[] written = new int[SmallCase.UNITS];
    private final int[] outs = new int[SmallCase.UNITS];
    private final int[] ins = new int[SmallCase.UNITS];
    private final Best best = new Best();
    private int end;
    private int fresh;
    private int lists;
    private boolean[] unpinned;

    /** @param mostUnits changes of more units are passed over: where prices fall to nothing, there is no end of them */
    AllChanges(SmallCase small, Fielding fielding, long mostMoved, int mostUnits, int mostLists) {
        this.small = small;
        this.mostUnits = mostUnits;
        this.fielding = fielding;
        this.mostMoved = mostMoved;
        this.mostLists = mostLists;
        int number = 0;
        for (int s = 0; s < small.squads.size(); s++) {
            starts.add(number);
            number += small.formations ? 1 : 0;
            for (Written row : small.squads.get(s).rows()) {
                for (int i = 0; i < row.count(); i++) {
                    copies.add(new Copy(s, number, row));
                    written[row.unit()] += small.squads.get(s).count();
                }
                number++;
            }
            ends.add(2 * number - 1);
        }
        end = 2 * number - 1;
        unpinned = new boolean[number];
        squadsLeft = small.squads.stream().mapToInt(Squad::count).toArray();
    }

    /** The best, or null if there are more lists than one would wait for. */
    Best run() {
        squads(0, 0);
        return lists > mostLists ? null : best;
    }

    private void squads(int squad, long moved) {
        if (!small.formations) {
            pins(0, 0);
            return;
        }
        if (squad == squadsLeft.length) {
            for (fresh = 0; fresh <= 1; fresh++) {
                pins(0, moved);
            }
            fresh = 0;
            return;
        }
        int all = small.squads.get(squad).count();
        for (int left = all; left >= 0; left--) {
            squadsLeft[squad] = left;
            int before = touches.size();
            long more = 0;
            for (Copy copy : copies) {
                for (int i = left; i < all && copy.squad == squad; i++) {
                    more += old(copy.row);
                    touches.add(new int[] {2 * copy.number, 1});
                    outs[copy.row.unit()]++;
                }
            }
            squads(squad + 1, moved + more);
            for (Copy copy : copies) {
                outs[copy.row.unit()] -= copy.squad == squad ? all - left : 0;
            }
            touches.subList(before, touches.size()).clear();
        }
        squadsLeft[squad] = all;
    }

    private void pins(int from, long moved) {
        for (int c = from; c < copies.size(); c++) {
            Copy copy = copies.get(c);
            if (copy.row.pin() != null && squadsLeft[copy.squad] > 0 && !unpinned[copy.number]) {
                unpinned[copy.number] = true;
                int next = c + copy.row.count();
                pins(next, moved);
                unpinned[copy.number] = false;
                pins(next, moved);
                return;
            }
        }
        fates(0, moved);
    }

    private long old(Written row) {
        long plain = small.kits.get(row.unit()).before()[row.strength() - 1]
                + (long) row.options() * small.kits.get(row.unit()).option();
        return plain + toll(row.unit(), row.strength(), plain, written);
    }

    /** What a formula adds: never so much less that there is nothing left to pay. */
    private long toll(int unit, int strength, long plain, int[] counts) {
        return small.spoken == null ? 0 : Math.max(-plain, small.spoken.toll(unit, strength, counts));
    }

    private void fates(int number, long moved) {
        if (touches.stream().mapToInt(touch -> touch[1]).sum() > mostUnits || moved > mostMoved || lists > mostLists) {
            return;
        }
        if (number == copies.size()) {
            adds(0, moved);
            return;
        }
        Copy copy = copies.get(number);
        int weight = small.formations ? squadsLeft[copy.squad] : 1;
        if (weight == 0) {
            fates(number + 1, moved);
            return;
        }
        Written row = copy.row;
        String pin = unpinned[copy.number] ? null : row.pin();
        int place = small.formations ? copy.squad : TOP;
        stand(new Stand(place, row.unit(), row.strength(), row.options(), pin), () -> fates(number + 1, moved));
        int at = 2 * copy.number;
        touch(at, weight, row.unit(), weight, -1, 0, () -> fates(number + 1, moved + weight * old(row)));
        Kit kit = small.kits.get(row.unit());
        ways(kit, (strength, options) -> {
            if (row.unit() != small.gone && (strength != row.strength() || options != row.options())) {
                long each = Math.abs(kit.after()[strength - 1] - kit.after()[row.strength() - 1])
                        + Math.abs(options - row.options()) * (long) kit.option();
                touch(at, weight, -1, 0, -1, 0, () -> stand(new Stand(place, row.unit(), strength, options, pin),
                        () -> fates(number + 1, moved + weight * each)));
            }
        });
        if (row.unit() == small.gone) {
            int next = (row.unit() + 1) % SmallCase.UNITS;
            ways(small.kits.get(next), (strength, options) -> {
                Stand stand = new Stand(place, next, strength, options, pin);
                long each = small.difference ? 0 : old(row);
                touch(at, weight * (small.difference ? 1 : 2), row.unit(), weight, next, weight,
                        () -> put(new Put(stand, weight, small.difference, old(row)),
                                () -> fates(number + 1, moved + weight * each)));
            });
        }
    }

    private long is(int unit, int strength, int options) {
        return small.kits.get(unit).after()[strength - 1] + (long) options * small.kits.get(unit).option();
    }

    private interface Way {
        void of(int strength, int options);
    }

    private static void ways(Kit kit, Way way) {
        for (int strength = 1; strength <= 2; strength++) {
            for (int options = 0; options <= kit.options() && kit.after()[strength - 1] > 0; options++) {
                way.of(strength, options);
            }
        }
    }

    private void put(Put put, Runnable next) {
        puts.add(put);
        stand(put.stand, next);
        puts.remove(puts.size() - 1);
    }

    /** What is put in moves what it costs in the list that comes of it. */
    private long putIn() {
        int[] counts = new int[SmallCase.UNITS];
        for (Stand stand : stands) {
            counts[stand.unit] += stand.place >= 0 ? squadsLeft[stand.place] : 1;
        }
        long moved = 0;
        for (Put put : puts) {
            long plain = is(put.stand.unit, put.stand.strength, put.stand.options);
            long price = plain + toll(put.stand.unit, put.stand.strength, plain, counts);
            moved += put.weight * (put.difference ? Math.abs(price - put.old) : price);
        }
        return moved;
    }

    private void stand(Stand stand, Runnable next) {
        stands.add(stand);
        next.run();
        stands.remove(stands.size() - 1);
    }

    private void touch(int at, int units, int out, int outs, int in, int ins, Runnable next) {
        touches.add(new int[] {at, units});
        this.outs[Math.max(0, out)] += outs;
        this.ins[Math.max(0, in)] += ins;
        next.run();
        this.outs[Math.max(0, out)] -= outs;
        this.ins[Math.max(0, in)] -= ins;
        touches.remove(touches.size() - 1);
    }

    private void adds(int from, long moved) {
        if (moved + (small.spoken == null ? putIn() : 0) > mostMoved || lists++ > mostLists
                || touches.stream().mapToInt(touch -> touch[1]).sum() > mostUnits) {
            return;
        }
        judge(moved);
        int number = 0;
        List<Integer> places = new ArrayList<>();
        if (!small.formations) {
            places.add(TOP);
        } else {
            for (int s = 0; s < squadsLeft.length; s++) {
                if (squadsLeft[s] > 0) {
                    places.add(s);
                }
            }
            if (fresh > 0) {
                places.add(FRESH);
            }
            if (small.supports) {
                places.add(TOP);
            }
        }
        for (int place : places) {
            for (int unit = 0; unit < SmallCase.UNITS; unit++) {
                for (int strength = 1; strength <= 2; strength++) {
                    Kit kit = small.kits.get(unit);
                    for (int options = 0; options <= kit.options(); options++) {
                        if (number++ >= from && unit != small.gone && kit.after()[strength - 1] > 0) {
                            add(place, new Stand(place, unit, strength, options, null), number - 1, moved);
                        }
                    }
                }
            }
        }
    }

    private void add(int place, Stand stand, int number, long moved) {
        int weight = place >= 0 ? squadsLeft[place] : 1;
        int at = place >= 0 ? ends.get(place) : place == TOP && small.formations ? end + 1 : end;
        touch(at, weight, -1, 0, stand.unit, weight,
                () -> put(new Put(stand, weight, false, 0), () -> adds(number, moved)));
    }

    private long surcharges() {
        long moved = 0;
        for (int u = 0; u < SmallCase.UNITS; u++) {
            Kit kit = small.kits.get(u);
            int there = 0;
            for (Copy copy : copies) {
                there += copy.row.unit() == u ? small.squads.get(copy.squad).count() : 0;
            }
            moved += kit.dearer() * (long) (over(kit, there) - over(kit, there - outs[u]) + over(kit, there - outs[u] + ins[u])
                    - over(kit, there - outs[u]));
        }
        return moved;
    }

    private static int over(Kit kit, int count) {
        return Math.max(0, count - kit.beyond());
    }

    private void judge(long plain) {
        long moved = plain + putIn() + surcharges();
        long units = touches.stream().mapToLong(touch -> touch[1]).sum();
        if (moved > mostMoved || moved > best.moved || moved == best.moved && units > best.units) {
            return;
        }
        int[] positions = touches.stream().flatMapToInt(touch -> IntStream.generate(() -> touch[0])
                .limit(touch[1])).sorted().toArray();
        if (moved == best.moved && units == best.units && Arrays.compare(positions, best.positions) > 0) {
            return;
        }
        ForceList list = list();
        if (!Judge.judge(small.after, list, small.situation).legal()
                || !fielding.lacking(Requirements.of(small.after, list, Map.of())).isEmpty()) {
            return;
        }
        if (moved < best.moved || units < best.units || Arrays.compare(positions, best.positions) < 0) {
            best.lists.clear();
        }
        best.moved = moved;
        best.units = units;
        best.positions = positions;
        best.lists.add(text(list));
    }

    private ForceList list() {
        ListOf list = new ListOf("L", "B");
        for (int s = 0; s < squadsLeft.length && small.formations; s++) {
            if (squadsLeft[s] > 0) {
                list.add(formation(squadsLeft[s], "F", rows(s)));
            }
        }
        if (fresh > 0) {
            list.add(formation("F", rows(FRESH)));
        }
        if (small.formations) {
            list.support(rows(TOP));
        } else {
            list.add(rows(TOP));
        }
        return list.build();
    }

    private ListOf.Row[] rows(int place) {
        return stands.stream().filter(stand -> stand.place == place).map(AllChanges::row).toArray(ListOf.Row[]::new);
    }

    private static ListOf.Row row(Stand stand) {
        ListOf.Row row = some(1, "U" + stand.unit).of(stand.strength);
        if (stand.options > 0) {
            row.with(stand.options, "O");
        }
        return stand.pin == null ? row : row.in(stand.pin);
    }

    /** What stands in a list, in whatever order, one by one. */
    static String text(ForceList list) {
        return text(list.body().entries()) + '|' + text(list.body().supports());
    }

    private static String text(List<Entry> entries) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Entry entry : entries) {
            String what = entry.what().name() + entry.strength() + entry.options() + entry.billet() + '('
                    + text(entry.body().entries()) + ')';
            counts.merge(what, entry.count(), Integer::sum);
        }
        return counts.toString();
    }
}
