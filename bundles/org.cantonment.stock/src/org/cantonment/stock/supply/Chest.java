package org.cantonment.stock.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Certainty;

/** What lies together in one or several alike opened boxes while it is being counted. */
final class Chest {

    /** A cap over all of it. */
    record Over(Id cap, int most, Set<Id> of) {
    }

    /** By thing: known, guessed, unknown. */
    private final Map<Id, int[]> things = new TreeMap<>();
    private final List<Over> caps = new ArrayList<>();

    void add(Id what, Certainty certainty, int count) {
        int[] counts = things.computeIfAbsent(what, id -> new int[3]);
        counts[certainty.ordinal()] = Counts.sum(counts[certainty.ordinal()], count);
    }

    void cap(Cap cap, int boxes, Set<Id> of) {
        caps.add(new Over(cap.id(), Counts.times(cap.most(), boxes), of));
    }

    void cap(Over over) {
        caps.add(over);
    }

    /** All of the other in here, with its caps. */
    void add(Chest other) {
        other.things.forEach((what, counts) -> {
            for (Certainty certainty : Certainty.values()) {
                add(what, certainty, counts[certainty.ordinal()]);
            }
        });
        caps.addAll(other.caps);
    }

    Map<Id, int[]> things() {
        return things;
    }

    List<Over> caps() {
        return caps;
    }

    /** What is counted on. */
    int counted(Id what) {
        int[] counts = things.get(what);
        return counts == null ? 0 : Counts.sum(counts[0], counts[1]);
    }

    /** Takes so many out, guessed ones last. */
    void take(Id what, int count) {
        int[] counts = things.getOrDefault(what, new int[3]);
        int known = Math.min(counts[0], count);
        counts[0] -= known;
        counts[1] -= count - known;
    }

    /** Takes up to so many out, surest first, even of those that only may be there; says how many that were. */
    int takeUpTo(Id what, int count) {
        int[] counts = things.getOrDefault(what, new int[3]);
        int left = count;
        for (int i = 0; i < counts.length; i++) {
            int taken = Math.min(left, counts[i]);
            counts[i] -= taken;
            left -= taken;
        }
        return count - left;
    }

    /** Uses up room under the caps. */
    void built(Id type, int count) {
        for (int i = 0; i < caps.size(); i++) {
            Over cap = caps.get(i);
            if (cap.of().contains(type)) {
                caps.set(i, new Over(cap.cap(), Math.max(0, cap.most() - count), cap.of()));
            }
        }
    }
}
