package org.cantonment.stock.turnout;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.likeness.StandIn;
import org.cantonment.stock.supply.Frames;

/**
 * A question in numbers: needs and whatever has to do with them, and nothing that another instance has to do with.
 *
 * @param types the piece types and bits
 * @param known how many of each are known
 * @param guessed how many more are guessed
 * @param unknown how many more there may be
 * @param classes the needs
 * @param direct for each class who may stand there without a share to keep to
 * @param lines the lines of likeness
 * @param before for each of those how many stood there last time; empty if nobody remembers
 * @param crowds types that the very same classes take
 * @param hubs lines of likeness with a share
 * @param lumps the frames
 * @param rooms caps over frames
 * @param turns conversions
 * @param oneTable whether a type that stands for itself stands for nothing else
 */
record Instance(
        List<Id> types, int[] known, int[] guessed, int[] unknown, List<NeedClass> classes, Direct[] direct,
        List<StandIn> lines, int[][] before, List<Crowd> crowds, List<Hub> hubs, List<Lump> lumps, List<Room> rooms, List<Turn> turns, boolean oneTable) {

    /**
     * The types that may stand for a class without a share to keep to.
     *
     * @param types the types, in order
     * @param tiers how true each is, as the place of the truth among the truths
     * @param lines the place of the line that lets each; -1 where none is needed
     * @param crowds the crowd each comes with; -1 for those that come alone
     */
    record Direct(int[] types, int[] tiers, int[] lines, int[] crowds) {

        int size() {
            return types.length;
        }

        /** The place of a type that is there. */
        int at(int type) {
            return Arrays.binarySearch(types, type);
        }
    }

    /**
     * Types that may stand for each of these classes alike: one way from all of them to each class says as much as one from
     * each. A type that is truer to a class than the others has a way of its own there besides.
     *
     * @param tiers for each class how true they are to it
     */
    record Crowd(int[] types, int[] classes, int[] tiers) {
    }

    /** A line by which any of these types may stand for any of these classes, so many in all. */
    record Hub(StandIn line, int most, int[] types, int[] classes) {
    }

    /**
     * Frames, with what each way of building yields of the types here, bits included.
     *
     * @param from the number of the first of its ways among all ways of the instance
     * @param gives by way and type
     * @param types the types that any way gives
     * @param columns by the place in these types and by way, how many it gives
     * @param totals by way, how many pieces it gives of all types here
     */
    record Lump(Frames frames, int from, int[][] gives, int[] types, int[][] columns, int[] totals) {

        static Lump of(Frames frames, int from, int[][] gives) {
            int all = gives.length == 0 ? 0 : gives[0].length;
            int[] types = IntStream.range(0, all).filter(t -> Arrays.stream(gives).anyMatch(way -> way[t] > 0)).toArray();
            int[][] columns = new int[types.length][];
            for (int i = 0; i < types.length; i++) {
                int type = types[i];
                columns[i] = Arrays.stream(gives).mapToInt(way -> way[type]).toArray();
            }
            return new Lump(frames, from, gives, types, columns,
                    Arrays.stream(gives).mapToInt(way -> Arrays.stream(way).sum()).toArray());
        }

        int ways() {
            return gives.length;
        }

        /** Whether they give the type as they are built now. */
        boolean asItIs(int type) {
            return frames.built() >= 0 && gives[frames.built()][type] > 0;
        }

        /** Whether what is built of them may be worked over: not if it comes loose between games. */
        boolean feeds() {
            return frames.fixing() != Fixing.LOOSE_BETWEEN_GAMES;
        }

        /** Adds the most that they give of each type to work over. */
        void addMost(long[] spare) {
            for (int i = 0; feeds() && i < types.length; i++) {
                spare[types[i]] += (long) frames.count() * Arrays.stream(columns[i]).max().orElse(0);
            }
        }
    }

    /** At most so many, counted with weights for all ways of the instance. */
    record Room(Id cap, int most, int[] weights, List<Integer> lumps, boolean[] types) {
    }

    /**
     * A conversion: what it takes and gives of the types here, and how often it can be made.
     *
     * @param scarce of the types of which it takes no fewer than it gives, the one there is least of; -1 if there is none
     */
    record Turn(Conversion conversion, int[] from, int[] takes, int to, int most, int scarce) {

        /** Whether one becomes one: then the flow makes it. */
        boolean plain() {
            return from.length == 1 && takes[0] == 1 && conversion.gives() == 1;
        }
    }

    boolean remembers() {
        return before.length > 0;
    }

    /** How many of those who came by this direct way stood there last time. */
    int before(int one, int i) {
        return before.length == 0 ? 0 : before[one][i];
    }

    int ways() {
        return lumps.isEmpty() ? 0 : lumps.get(lumps.size() - 1).from() + lumps.get(lumps.size() - 1).ways();
    }

    /** For each type whether a conversion takes it. */
    boolean[] taken() {
        boolean[] taken = new boolean[types.size()];
        turns.forEach(turn -> Arrays.stream(turn.from()).forEach(type -> taken[type] = true));
        return taken;
    }

    int needed() {
        long needed = 0;
        for (NeedClass one : classes) {
            needed += one.count();
        }
        return (int) Math.min(Integer.MAX_VALUE / 2, needed);
    }
}
