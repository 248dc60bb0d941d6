package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;

import org.cantonment.domain.common.Id;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Node;

/**
 * A change that is being put together: what was done so far, and what is left for others to try. Two states never hold the
 * same edits.
 */
final class State {

    /** Formations that one change puts in. */
    static final int MOST_FORMATIONS = 40;

    private final Board board;
    private final List<Edit> edits;
    private final BitSet forbidden;
    private final int[] touched;
    private final long cost;
    private int formations;

    private State(Board board, List<Edit> edits, BitSet forbidden, int[] touched) {
        this.board = board;
        this.edits = edits;
        this.forbidden = forbidden;
        this.touched = touched;
        for (Edit edit : edits) {
            formations += edit.kind() == Kind.ADD_FORMATION ? 1 : 0;
        }
        this.cost = cost(this::surely, false);
    }

    /** Nothing is done yet. */
    static State of(Board board) {
        return new State(board, List.of(), new BitSet(), new int[board.groups().size()]);
    }

    /** One edit more; what its elder sisters stand for is not done after it. */
    State with(Edit edit, BitSet never) {
        List<Edit> more = new ArrayList<>(edits);
        more.add(edit);
        int[] counts = touched;
        if (edit.group() != null && edit.kind() != Kind.UNPIN) {
            counts = touched.clone();
            counts[edit.group().index()]++;
        }
        return new State(board, more, never, counts);
    }

    /** The same without the edit of this number; null if that cannot be done alone. */
    State without(int number) {
        Edit gone = edits.get(number);
        if (gone.kind() == Kind.ADD_FORMATION) {
            return null;
        }
        State state = of(board);
        for (int i = 0; i < edits.size(); i++) {
            state = i == number ? state : state.with(edits.get(i), state.forbidden);
        }
        return state;
    }

    List<Edit> edits() {
        return edits;
    }

    BitSet forbidden() {
        return forbidden;
    }

    /**
     * What it costs at the least, as a {@link Cost}: a formation of which more may yet be taken out counts once, and
     * surcharges on what is put in do not count.
     */
    long cost() {
        return cost;
    }

    /** How many of a group are as they were written. */
    int left(Group group) {
        return group.copies() - touched[group.index()];
    }

    /** How often an edit of what is written may still be made. */
    int spare(Edit edit) {
        return edit.kind() == Kind.UNPIN ? 1 : left(edit.group());
    }

    private int times(Edit edit) {
        int times = 0;
        for (Edit some : edits) {
            times += some == edit ? 1 : 0;
        }
        return times;
    }

    /** How many of a written formation's copies are left, the formations that it stands in multiplied in. */
    private long copies(Group formation) {
        long copies = 1;
        for (Group at = formation; at != null; at = at.above()) {
            copies *= left(at);
        }
        return copies;
    }

    /** All that may still be done, in order. */
    List<Edit> open() {
        List<Edit> open = new ArrayList<>();
        for (Edit edit : board.written()) {
            if (may(edit)) {
                open.add(edit);
            }
        }
        boolean more = false;
        for (Place place : putIn()) {
            for (Edit edit : place.adds()) {
                if (may(edit)) {
                    open.add(edit);
                    more = true;
                }
            }
        }
        if (more) {
            open.sort(Board.ORDER);
        }
        return open;
    }

    /** The places in formations that were put in. */
    List<Place> putIn() {
        if (formations == 0) {
            return List.of();
        }
        Map<Edit, Integer> counts = new LinkedHashMap<>();
        List<Place> places = new ArrayList<>();
        for (Edit edit : edits) {
            if (edit.kind() == Kind.ADD_FORMATION) {
                Place place = board.place(edit, counts.merge(edit, 1, Integer::sum) - 1);
                places.add(place);
                if (place.depth() > Board.DEEPEST) {
                    board.curtail(cost);
                }
            }
        }
        return places;
    }

    /** Whether an edit that might be done before this state may still be done, as far as that is told at a glance. */
    boolean leaves(Edit edit) {
        return !forbidden.get(edit.id()) && (edit.group() == null || spare(edit) > 0);
    }

    private boolean may(Edit edit) {
        if (forbidden.get(edit.id())) {
            return false;
        }
        Group group = edit.group();
        if (group == null) {
            return copies(edit.place().above()) > 0 && times(edit) < Bound.MOST_OF_ONE
                    && (edit.kind() != Kind.ADD_FORMATION || oneFormationMore());
        }
        if (copies(group.above()) == 0) {
            return false;
        }
        if (edit.kind() == Kind.UNPIN) {
            return times(edit) == 0 && removed(group) < group.copies();
        }
        return left(group) > 0 && (!group.formation() || left(group) > 1 || untouched(group));
    }

    private boolean oneFormationMore() {
        if (formations >= MOST_FORMATIONS) {
            board.curtail(cost);
        }
        return formations < MOST_FORMATIONS;
    }

    private int removed(Group group) {
        int removed = 0;
        for (Edit edit : edits) {
            removed += edit.group() == group && edit.kind() == Kind.REMOVE ? 1 : 0;
        }
        return removed;
    }

    /** Whether nothing was done inside a written formation: only then does it make sense to take out the last of it. */
    private boolean untouched(Group formation) {
        for (Edit edit : edits) {
            for (Group at = above(edit); at != null; at = at.above()) {
                if (at == formation) {
                    return false;
                }
            }
        }
        return true;
    }

    /** How often an edit counts: as many times as the formation it is done in stands in the changed list. */
    private long weight(Edit edit) {
        return copies(above(edit));
    }

    /** The same at the least. */
    private long surely(Edit edit) {
        long copies = 1;
        for (Group at = above(edit); at != null; at = at.above()) {
            boolean settled = at.fates().stream().allMatch(fate -> forbidden.get(fate.id()));
            copies *= settled ? left(at) : Math.min(1, left(at));
        }
        return copies;
    }

    /** How often it would count if all written formations were there still. */
    private static long written(Edit edit) {
        long copies = 1;
        for (Group at = above(edit); at != null; at = at.above()) {
            copies *= at.copies();
        }
        return copies;
    }

    private static Group above(Edit edit) {
        return edit.group() != null ? edit.group().above() : edit.place().above();
    }

    /** What the finished change costs, as a {@link Cost}, with what formulas add to what it puts in. */
    long exact(Draft draft) {
        long exact = cost(this::weight, true);
        long more = 0;
        for (Draft.Put put : draft.puts()) {
            more += draft.more(put) * put.count() * weight(put.edit());
        }
        return Cost.of(Cost.moved(exact) + more, Cost.units(exact));
    }

    private long cost(ToLongFunction<Edit> weights, boolean whole) {
        long moved = 0;
        long units = 0;
        for (Edit edit : edits) {
            long weight = weights.applyAsLong(edit);
            moved += edit.moved() * weight;
            units += edit.units() * weight;
        }
        return Cost.of(moved + surcharges(weights, whole), units);
    }

    private long surcharges(ToLongFunction<Edit> weights, boolean whole) {
        long moved = 0;
        for (Part part : board.parts()) {
            if (!board.maker(part).prices().surcharged()) {
                continue;
            }
            Map<Id, long[]> outAndIn = new LinkedHashMap<>();
            for (Edit edit : edits) {
                if ((edit.group() != null ? edit.group().part() : edit.place().part()) == part) {
                    for (Delta delta : edit.deltas()) {
                        long each = Math.abs(delta.count()) * weights.applyAsLong(edit) / written(edit);
                        outAndIn.computeIfAbsent(delta.choice().id(), id -> new long[2])[delta.count() < 0 ? 0 : 1] += each;
                    }
                }
            }
            for (Map.Entry<Id, long[]> some : outAndIn.entrySet()) {
                moved += board.maker(part).prices().surcharges(some.getKey(), part, some.getValue()[0],
                        whole ? some.getValue()[1] : 0);
            }
        }
        return moved;
    }

    /** Where the touched stand, in order, each formation counted once; as many as are wanted, the last ones nowhere. */
    int[] positions(int wanted) {
        int[] positions = new int[wanted];
        int[] next = new int[touched.length];
        int count = 0;
        for (Edit edit : edits) {
            count = positions(edit, next, positions, count);
        }
        Arrays.fill(positions, count, wanted, Integer.MAX_VALUE);
        Arrays.sort(positions);
        return positions;
    }

    /** How many units are touched, each formation counted once. */
    int units() {
        int units = 0;
        for (Edit edit : edits) {
            units += edit.units();
        }
        return units;
    }

    private static int positions(Edit edit, int[] next, int[] into, int from) {
        int count = from;
        if (edit.group() == null || edit.kind() == Kind.UNPIN || !edit.group().formation()) {
            boolean one = edit.group() != null && edit.kind() != Kind.UNPIN;
            int at = one ? edit.group().position(next[edit.group().index()]++) : edit.position();
            for (int i = 0; i < edit.units(); i++) {
                into[count++] = at;
            }
            return count;
        }
        Node formation = edit.group().first();
        Part part = edit.group().part();
        for (Node inside : part.muster().nodes().subList(formation.index(), formation.end())) {
            long each = inside.unit() == null ? 0 : inside.copies() / formation.copies();
            for (long i = 0; i < each && count < into.length; i++) {
                into[count++] = 2 * (part.first() + inside.index());
            }
        }
        return count;
    }

    /** Where those stand that were not touched so far, of a group. */
    int position(Group group, int more) {
        return group.position(touched[group.index()] + more);
    }
}
