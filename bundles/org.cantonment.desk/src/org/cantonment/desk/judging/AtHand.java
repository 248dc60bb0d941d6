package org.cantonment.desk.judging;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
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
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.ledger.Inventory;
import org.cantonment.stock.ledger.Ledger;
import org.cantonment.stock.ledger.Loan;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;

/**
 * The pieces that players own ready to hand when a list is played, as turnouts count them: what shelves say and weeks have
 * done since; what is lent out is its owner's still. What is guessed counts as it is guessed. Of paint only the shelves know.
 * Holds what it has worked out of one state of the books.
 */
final class AtHand {

    private final Meanings meanings;
    private final Catalogue catalogue;
    private final Map<Optional<Id>, Ledger> ledgers = new HashMap<>();
    private final Map<Object, Optional<Holdings>> known = new HashMap<>();

    AtHand(Meanings meanings) {
        this.meanings = meanings;
        this.catalogue = Catalogue.of(meanings.ranges(), meanings.ruleSets());
    }

    /** What a list's player owns when it is played; empty if no shelf says. */
    synchronized Optional<Holdings> of(ForceList list) {
        Id player = list.player().orElseThrow();
        List<Shelf> own = meanings.shelves().stream().filter(shelf -> shelf.owners().contains(player)).toList();
        if (own.isEmpty()) {
            return Optional.empty();
        }
        Optional<Campaign> campaign = meanings.campaignOf(player);
        AsOf when = Stores.when(list, campaign, OptionalInt.empty());
        return known.computeIfAbsent(List.of(player, when), key -> Optional.of(holdings(player, own,
                ledgers.computeIfAbsent(campaign.map(Campaign::id), id -> Stores.of(meanings, catalogue, campaign)).at(when))));
    }

    private Holdings holdings(Id player, List<Shelf> shelves, Inventory inventory) {
        Map<Id, Long> owned = new HashMap<>();
        Set<Id> uncounted = new HashSet<>();
        Supply supply = inventory.of(player);
        supply.stacks().forEach(stack -> {
            owned.merge(stack.what(), (long) stack.counted(), Long::sum);
            if (stack.unknown() > 0) {
                uncounted.add(stack.what());
            }
        });
        for (Frames frames : supply.frames()) {
            if (frames.built() >= 0) {
                frames.ways().get(frames.built()).gives().forEach((type, count) ->
                        owned.merge(type, (long) count * frames.count(), Long::sum));
            }
        }
        for (Loan loan : inventory.loans()) {
            owned.merge(loan.what(), loan.owner().equals(player) ? (long) loan.count() : 0L, Long::sum);
            owned.merge(loan.what(), loan.holder().equals(Optional.of(player)) ? -(long) loan.count() : 0L, Long::sum);
        }
        owned.keySet().removeIf(type -> !catalogue.isPiece(type));
        uncounted.removeIf(type -> !catalogue.isPiece(type));
        Map<Id, Long> painted = painted(shelves);
        painted.replaceAll((type, count) -> Math.min(count, owned.getOrDefault(type, 0L)));
        return new Holdings(owned, painted, uncounted);
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

    private Map<Id, Long> painted(List<Shelf> shelves) {
        Map<Id, Long> painted = new HashMap<>();
        for (Shelf shelf : shelves) {
            for (Holding holding : shelf.holdings()) {
                if (catalogue.isPiece(holding.what())) {
                    painted.merge(holding.what(), painted(holding), Long::sum);
                }
                holding.made().forEach(made -> add(made, painted));
            }
        }
        return painted;
    }

    private void add(Made made, Map<Id, Long> painted) {
        long sign = made.act() == MadeAct.BUILT ? 1 : made.act() == MadeAct.LOST ? -1 : 0;
        for (Held held : made.things()) {
            if (catalogue.isPiece(held.what()) && held.state().filter(AtHand::finished).isPresent()) {
                painted.merge(held.what(), sign * held.count(), Long::sum);
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
