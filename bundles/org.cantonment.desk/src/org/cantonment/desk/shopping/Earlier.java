package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.cantonment.desk.judging.Used;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.view.Situation;

/** What the lists of a growth plan come after: written ones stand, but for those that are composed anew. */
final class Earlier {
    private final List<ForceList> standing;
    private final List<Turn> turns;

    /** @param written the player's lists for rounds, in the order of these */
    Earlier(List<ForceList> written, List<Turn> turns) {
        Set<Integer> composed = turns.stream().filter(turn -> turn.written().isEmpty()).map(turn -> turn.round().number())
                .collect(Collectors.toSet());
        this.standing = written.stream().filter(list -> list.round().isPresent() && !composed.contains(list.round().getAsInt()))
                .toList();
        this.turns = turns;
    }

    /**
     * What the list of a turn is judged in.
     *
     * @param composed what has been composed for turns before it, by their places
     */
    Situation of(int stage, Map<Integer, ForceList> composed) {
        int round = turns.get(stage).round().number();
        List<ForceList> earlier = new ArrayList<>(standing.stream().filter(list -> list.round().getAsInt() < round).toList());
        Optional<ForceList> before = Optional.empty();
        int last = earlier.isEmpty() ? 0 : earlier.get(earlier.size() - 1).round().getAsInt();
        if (!follows(stage)) {
            before = earlier.isEmpty() ? Optional.empty() : Optional.of(earlier.get(earlier.size() - 1));
        }
        for (int at = 0; at < stage; at++) {
            if (composed.containsKey(at)) {
                earlier.add(composed.get(at));
                before = turns.get(at).round().number() > last ? Optional.of(composed.get(at)) : before;
            }
        }
        Situation now = turns.get(stage).about().situation();
        return new Situation(now.points(), now.pointsRule(), now.player(), now.side(), before, Used.in(earlier), now.excuses(),
                now.contingents(), now.cancel(), now.holdings(), now.kin());
    }

    /** Whether the turn before is composed, and no list stands between. */
    boolean follows(int stage) {
        return stage > 0 && turns.get(stage - 1).written().isEmpty() && standing.stream().mapToInt(list ->
                list.round().getAsInt()).noneMatch(round -> turns.get(stage - 1).round().number() < round
                        && round < turns.get(stage).round().number());
    }
}
