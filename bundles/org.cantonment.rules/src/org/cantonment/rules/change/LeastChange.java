package org.cantonment.rules.change;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/**
 * Searches for the least change that makes a list legal: fewest points moved, then fewest units touched, then the one
 * that touches what stands earlier in the list, and then the same every time.
 *
 * <p>Considered is everything of this kind, in any combination: units, formations and supports taken out, whole or some
 * of an entry; units at any strength and with any options, and formations, put in wherever a billet or support might take
 * them, also into formations that were put in; other strengths and options; the successor in a unit's place; and an entry
 * no longer held to its billet. A unit that goes from one formation to another is taken out there and put in here. What
 * stands in a formation that is written with a number changes in all of them. Not considered are names: what is put in
 * has none and joins nothing; and what may not be taken is never put in, not even under a dispensation. Beyond
 * {@value Variants#MOST} ways to take a unit, those with more options are left out.
 *
 * <p>What is moved: what is taken out, at the price that it had in the list as written; what is put in, at the price that
 * it has in the list that comes of it; a unit that only gets another strength or other options, the difference that these
 * make by themselves. So what a formula adds to a price is moved with the unit that goes or comes, and a formula that adds
 * more or less to a unit that stays, since something else goes or comes, moves nothing. Surcharges beyond a number are moved
 * with those of a unit that are beyond it. Nothing is moved below 0 points.
 *
 * <p>Of one kind a change puts in at most {@value Bound#MOST_OF_ONE} in one place. It puts in at most
 * {@value State#MOST_FORMATIONS} formations, and into one another down to a fifth; if nothing else does, the search does not
 * say that it is complete.
 *
 * <p>How it stays exact: every breach becomes a {@link Need}, a set of edits of which every legal list holds enough, and
 * the search branches over the edits of one need, each standing for all changes with it and without those before it. So
 * no change is looked at twice and none is missed. What a state must at least come to is known from its needs, each a
 * knapsack to be filled; states are looked at in that order, so that the first legal list is the least.
 */
public final class LeastChange {

    /** How many lists to look at before giving up, where nobody says otherwise. */
    public static final int MOST = 50_000;

    /** How many lists to look at for some legal list when the search was given up. */
    private static final int MOST_DIVE = 2_000;

    private final Ruling now;
    private final Situation situation;
    private final Stock stock;
    private final Predicate<Answer> agreed;
    private final Board board;
    private final PriorityQueue<Item> queue = new PriorityQueue<>();
    private final List<Answer> answers = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private int numbers;

    /** What stands in the queue: a way on, or a legal list at its exact place. */
    private record Item(long cost, int[] positions, int number, Expansion expansion, Answer answer)
            implements Comparable<Item> {

        @Override
        public int compareTo(Item other) {
            int order = Long.compare(cost, other.cost);
            order = order == 0 ? Arrays.compare(positions, other.positions) : order;
            return order == 0 ? Integer.compare(number, other.number) : order;
        }
    }

    private LeastChange(Ruling now, Ruling written, ForceList list, Situation situation, Fielding fielding,
            Predicate<Answer> agreed) {
        this.agreed = agreed;
        this.now = now;
        this.situation = situation;
        this.board = new Board(now, written, situation, list, fielding != Fielding.ALL);
        this.stock = new Stock(board, fielding);
    }

    /**
     * Searches.
     *
     * @param now the rules that the list is to be legal under
     * @param written the rules it was written under: what is taken out moves its points under these
     * @param fielding what the player owns, or {@link Fielding#ALL}
     * @param wanted how many answers, at least 1; none of them holds another
     * @param most how many lists to look at before giving up; each costs one judging. As many again, and no more than
     *        {@value #MOST_DIVE}, are then looked at for some legal list
     * @throws org.cantonment.domain.common.Cancelled if the situation's token says so
     */
    public static Found search(Ruling now, Ruling written, ForceList list, Situation situation, Fielding fielding,
            int wanted, int most) {
        return search(now, written, list, situation, fielding, any -> true, wanted, most);
    }

    /**
     * The same where others must agree, too: nobody but they knows what would content them, so from a list that they refuse
     * the search goes on in every direction. That is as exact, and slow.
     *
     * @param agreed asked about each change that the rules allow, in no order; the same answer each time
     */
    public static Found search(Ruling now, Ruling written, ForceList list, Situation situation, Fielding fielding,
            Predicate<Answer> agreed, int wanted, int most) {
        return new LeastChange(now, written, list, situation, fielding, agreed).run(wanted, most);
    }

    /** What a state turned out to be: legal, or on its way, or neither. */
    private record Look(State state, Answer answer, long exact, Expansion expansion) {
    }

    private Found run(int wanted, int most) {
        State root = State.of(board);
        put(look(root, 0));
        int looked = 1;
        while (!queue.isEmpty() && answers.size() < wanted && (looked < most || queue.peek().answer() != null)) {
            Item item = queue.poll();
            if (item.answer() != null) {
                if (seen.add(Canonical.key(item.answer().after()))) {
                    answers.add(item.answer());
                }
                continue;
            }
            if (item.expansion().foresee()) {
                put(item.expansion());
                continue;
            }
            looked++;
            State child = item.expansion().take();
            put(item.expansion());
            put(look(child, item.cost()));
        }
        // That there is none at all can only be said if nothing was left out.
        boolean cut = answers.isEmpty() && queue.isEmpty() && board.curtailed() < Long.MAX_VALUE;
        boolean complete = !cut && (queue.isEmpty() || answers.size() >= wanted);
        long bound = cut ? Cost.moved(board.curtailed())
                : queue.isEmpty() ? Long.MAX_VALUE : Cost.moved(queue.peek().cost());
        if (!complete && !cut && answers.isEmpty()) {
            dive(root, Math.min(most, MOST_DIVE));
        }
        return new Found(answers, complete, bound);
    }

    private void put(Look look) {
        if (look.answer() != null) {
            queue.add(new Item(look.exact(), look.state().positions(Math.max(look.state().units(), look.answer().units())), numbers++, null, look.answer()));
        } else if (look.expansion() != null) {
            put(look.expansion());
        }
    }

    private void put(Expansion expansion) {
        if (expansion.hasNext()) {
            queue.add(new Item(expansion.cost(), expansion.positions(), numbers++, expansion, null));
        }
    }

    /** The search was given up: takes the best way on from each list until one is legal, going back where there is none. */
    private void dive(State root, int most) {
        Deque<Expansion> path = new ArrayDeque<>();
        Look look = look(root, 0);
        for (int i = 0; i < most && look.answer() == null; i++) {
            if (look.expansion() != null && look.expansion().hasNext()) {
                path.push(look.expansion());
            }
            while (!path.isEmpty() && !path.peek().hasNext()) {
                path.pop();
            }
            if (path.isEmpty()) {
                return;
            }
            long floor = path.peek().cost();
            look = look(path.peek().take(), floor);
        }
        if (look.answer() != null) {
            answers.add(polished(look).answer());
        }
    }

    /** Leaves out of a change what it does not need: one edit, or two that only answer each other. */
    private Look polished(Look found) {
        Look best = found;
        for (int i = best.state().edits().size() - 1; i >= 0; i = Math.min(i, best.state().edits().size()) - 1) {
            State one = best.state().without(i);
            Look less = one == null ? best : look(one, 0);
            for (int j = i - 1; j >= 0 && one != null && less.answer() == null; j--) {
                State two = one.without(j);
                less = two == null ? less : look(two, 0);
            }
            best = less.answer() == null ? best : less;
        }
        return best;
    }

    private Look look(State state, long floor) {
        situation.cancel().check();
        if (!stock.has(state)) {
            return new Look(state, null, 0, null);
        }
        Draft draft = new Draft(board, state);
        Verdict verdict = Judge.bare(draft.list(), board.parts().stream().map(draft::layout).toList(), situation);
        Needs needs = new Needs(board, state, draft);
        Set<Id> lacking = stock.lacking(draft.list(), verdict.legal());
        if (verdict.legal() && lacking.isEmpty()) {
            long exact = state.exact(draft);
            Answer answer = new Answer(draft.actions(), Cost.moved(exact), Cost.units(exact), draft.list(),
                    Judge.judge(now, draft.list(), situation));
            if (agreed.test(answer)) {
                return new Look(state, answer, exact, null);
            }
        }
        List<Need> all = needs.of(verdict);
        if (all.isEmpty() && lacking.isEmpty()) {
            all.add(needs.anything());
        }
        if (!lacking.isEmpty()) {
            all.add(needs.lacking(lacking));
        }
        boolean hopeless = all.stream().anyMatch(need -> need.edits().isEmpty());
        return new Look(state, null, 0, hopeless ? null : new Expansion(state, all, needs.kept(verdict), needs.open(), floor));
    }
}
