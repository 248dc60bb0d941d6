package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/**
 * Searches for the least change that makes a list legal: fewest points moved, then fewest units touched, then the same
 * every time. Every finding names changes of which at least one is needed; lists are looked at in the order of what was
 * moved, so that the first legal one is the least. Considered are units and formations taken out, put in or replaced by
 * their successors, strengths and options; not considered is moving a unit from one formation to another, or into or out
 * of a contingent.
 */
public final class LeastChange {

    /** How many lists to look at before giving up, where nobody says otherwise. */
    public static final int MOST = 50_000;

    private final Ruling now;
    private final Ruling written;
    private final Situation situation;
    private final Fielding fielding;
    private final PriorityQueue<State> queue = new PriorityQueue<>(Comparator.comparingLong(State::moved)
            .thenComparingInt(State::units).thenComparing(State::key)
            .thenComparingInt(state -> state.actions().size()));
    private final Set<String> seen = new HashSet<>();
    private final List<Answer> answers = new ArrayList<>();

    /** A list that was reached, and how. */
    private record State(ForceList list, List<Action> actions, long moved, int units, String key) {
    }

    private LeastChange(Ruling now, Ruling written, Situation situation, Fielding fielding) {
        this.now = now;
        this.written = written;
        this.situation = situation;
        this.fielding = fielding;
    }

    /**
     * Searches.
     *
     * @param now the rules that the list is to be legal under
     * @param written the rules it was written under: what is taken out moves its points under these
     * @param fielding what the player owns, or {@link Fielding#ALL}
     * @param wanted how many answers, at least 1
     * @param most how many lists to look at before giving up; each costs one judging
     * @throws org.cantonment.domain.common.Cancelled if the situation's token says so
     */
    public static Found search(Ruling now, Ruling written, ForceList list, Situation situation, Fielding fielding,
            int wanted, int most) {
        return new LeastChange(now, written, situation, fielding).run(list, wanted, most);
    }

    private Found run(ForceList list, int wanted, int most) {
        put(new State(list, List.of(), 0, 0, Canonical.key(list)));
        Set<String> closed = new HashSet<>();
        int looked = 0;
        while (!queue.isEmpty() && answers.size() < wanted && looked < most) {
            State state = queue.poll();
            if (closed.add(state.key())) {
                situation.cancel().check();
                looked++;
                look(state);
            }
        }
        boolean complete = queue.isEmpty() || answers.size() >= wanted;
        long bound = queue.isEmpty() ? Long.MAX_VALUE : queue.peek().moved();
        return new Found(answers, complete, bound);
    }

    private void put(State state) {
        if (seen.add(state.key() + '@' + state.moved() + '/' + state.units())) {
            queue.add(state);
        }
    }

    private void look(State state) {
        Verdict verdict = Judge.judge(now, state.list(), situation);
        List<Edit> branches;
        if (verdict.legal()) {
            Set<Id> lacking = fielding.lacking(Requirements.of(now, state.list(), Map.of()));
            if (lacking.isEmpty()) {
                answers.add(new Answer(state.actions(), state.moved(), state.units(), state.list(), verdict));
                return;
            }
            branches = rid(state, lacking);
        } else {
            branches = narrowest(state, verdict);
        }
        for (Edit edit : branches) {
            ForceList next = ListEdits.apply(state.list(), edit.actions());
            List<Action> actions = new ArrayList<>(state.actions());
            actions.addAll(edit.actions());
            put(new State(next, actions, state.moved() + edit.moved(), state.units() + edit.units(),
                    Canonical.key(next)));
        }
    }

    private List<Edit> rid(State state, Set<Id> lacking) {
        Scene scene = new Scene(now, written, situation, state.list());
        List<Edit> edits = new ArrayList<>();
        UnitBranches units = new UnitBranches(scene, new Places(scene));
        for (Node node : scene.nodes()) {
            if (lacking.contains(node.entry().id())) {
                edits.addAll(scene.remove(node, false));
                units.lower(node, edits);
            }
        }
        return edits;
    }

    /**
     * The changes for the breach that leaves the least choice. What the era does not have comes first: only there may a
     * successor step in, which else would be missing among the changes for other breaches.
     */
    private List<Edit> narrowest(State state, Verdict verdict) {
        Scene scene = new Scene(now, written, situation, state.list());
        if (situation.points().isPresent() && scene.pointsAdded() > situation.points().getAsInt()) {
            return List.of();
        }
        Places places = new Places(scene);
        UnitBranches units = new UnitBranches(scene, places);
        LimitBranches limits = new LimitBranches(scene, places, units);
        List<Edit> best = null;
        for (Finding finding : verdict.findings(Severity.BREACH)) {
            List<Edit> edits = units.of(finding);
            if (edits == null) {
                edits = limits.of(finding);
            }
            if (edits == null) {
                return List.of();
            }
            if (finding.code().startsWith("era.")) {
                return edits;
            }
            if (best == null || edits.size() < best.size()) {
                best = edits;
            }
        }
        return best;
    }
}
