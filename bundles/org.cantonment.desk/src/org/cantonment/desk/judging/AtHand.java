package org.cantonment.desk.judging;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Made;
import org.cantonment.domain.shelf.MadeAct;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.domain.shelf.State;
import org.cantonment.domain.shelf.StateShare;
import org.cantonment.rules.view.Holdings;

/**
 * The built pieces that a player's shelves hold as they are written: pieces that stand there, and what was built out of
 * boxes and parts, less what was lost of it. What is guessed counts as it is guessed.
 */
final class AtHand {

    private final Set<Id> pieces = new HashSet<>();
    private final Map<Id, Long> owned = new HashMap<>();
    private final Map<Id, Long> painted = new HashMap<>();
    private final Set<Id> uncounted = new HashSet<>();

    private AtHand(List<Range> ranges) {
        ranges.forEach(range -> range.pieces().forEach(piece -> pieces.add(piece.id())));
    }

    /** What stands on the shelves of a player; empty if no book says. */
    static Optional<Holdings> of(Id player, List<Range> ranges, List<Shelf> shelves) {
        List<Shelf> own = shelves.stream().filter(shelf -> shelf.owners().contains(player)).toList();
        if (own.isEmpty()) {
            return Optional.empty();
        }
        AtHand hand = new AtHand(ranges);
        own.forEach(shelf -> shelf.holdings().forEach(hand::take));
        return Optional.of(new Holdings(hand.owned, hand.painted, hand.uncounted));
    }

    /** The family of each piece type, and of each family the one it lies in. */
    static Map<Id, Id> kin(List<Range> ranges) {
        Map<Id, Id> kin = new HashMap<>();
        for (Range range : ranges) {
            for (Piece piece : range.pieces()) {
                piece.family().ifPresent(family -> kin.put(piece.id(), family));
            }
            range.families().forEach(family -> family.parent().ifPresent(parent -> kin.put(family.id(), parent)));
        }
        return kin;
    }

    private void take(Holding holding) {
        if (pieces.contains(holding.what())) {
            if (holding.certainty() == Certainty.UNKNOWN) {
                uncounted.add(holding.what());
                return;
            }
            owned.merge(holding.what(), (long) holding.count(), Long::sum);
            painted.merge(holding.what(), painted(holding), Long::sum);
        }
        for (Made made : holding.made()) {
            long sign = made.act() == MadeAct.BUILT ? 1 : made.act() == MadeAct.LOST ? -1 : 0;
            for (Held held : made.things()) {
                if (pieces.contains(held.what())) {
                    owned.merge(held.what(), sign * held.count(), Long::sum);
                    boolean done = held.state().filter(AtHand::finished).isPresent();
                    painted.merge(held.what(), done ? sign * held.count() : 0L, Long::sum);
                }
            }
        }
    }

    /** A share without a count is all that no other share takes. */
    private static long painted(Holding holding) {
        long counted = 0;
        long done = 0;
        boolean rest = false;
        for (StateShare share : holding.states()) {
            counted += share.count().orElse(0);
            done += finished(share.state()) ? share.count().orElse(0) : 0;
            rest |= finished(share.state()) && share.count().isEmpty();
        }
        return rest ? done + Math.max(0, holding.count() - counted) : Math.min(done, holding.count());
    }

    private static boolean finished(State state) {
        return state == State.PAINTED;
    }
}
