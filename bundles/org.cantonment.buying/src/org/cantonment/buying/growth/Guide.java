package org.cantonment.buying.growth;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.Ware;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Accepted;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;

/**
 * What a piece costs, roughly, and what is there already. It guides only which lists are tried first: what a plan costs is
 * reckoned by the planner.
 */
public final class Guide {

    /** Nothing is known of shops or shelf: every piece costs alike. */
    public static final Guide NONE = new Guide(null, Map.of(), Map.of());

    private static final long ALIKE = 100;
    private static final long UNSOLD = 100_000;

    private final Catalogue catalogue;
    private final Map<Id, Long> prices;
    private final Map<Id, Integer> own;

    private Guide(Catalogue catalogue, Map<Id, Long> prices, Map<Id, Integer> own) {
        this.catalogue = catalogue;
        this.prices = prices;
        this.own = own;
    }

    /** Of a market and a shelf. A piece costs its share of the box in which it is cheapest. */
    public static Guide of(Market market, Supply shelf) {
        Map<Id, Long> prices = new HashMap<>();
        for (Ware ware : market.wares()) {
            long each = ware.cost().getAmountMinorLong() / Math.max(1, ware.pieces());
            types(ware.load()).keySet().forEach(type -> prices.merge(type, each, Math::min));
        }
        return new Guide(market.catalogue(), prices, types(shelf));
    }

    private static Map<Id, Integer> types(Supply supply) {
        Map<Id, Integer> types = new HashMap<>();
        supply.stacks().forEach(stack -> types.merge(stack.what(), stack.counted(), Integer::sum));
        for (Frames frames : supply.frames()) {
            frames.ways().forEach(way -> way.gives().forEach((type, gives) -> types.merge(type, frames.count() * gives,
                    Integer::sum)));
        }
        return types;
    }

    /** The piece types that may fill a need. Items of a rule set are none. */
    Set<Id> types(List<Id> anyOf, Id unit, Allowance allowance) {
        if (catalogue == null) {
            return Set.copyOf(anyOf);
        }
        Accepted accepted = allowance.accepted(catalogue, anyOf, Optional.of(unit));
        Set<Id> types = new TreeSet<>(accepted.types().keySet());
        accepted.standIns().forEach((line, more) -> {
            if (allowance.standIns().get(line).percent().isEmpty()) {
                types.addAll(more);
            }
        });
        types.removeIf(catalogue::isItem);
        return types;
    }

    /** What one piece of these costs, roughly, in the smallest unit of money. */
    long price(Set<Id> types) {
        return types.isEmpty() ? 0 : catalogue == null ? ALIKE
                : types.stream().mapToLong(type -> prices.getOrDefault(type, UNSOLD)).min().orElse(UNSOLD);
    }

    /** How many of these are there. */
    int own(Set<Id> types) {
        return types.stream().mapToInt(type -> own.getOrDefault(type, 0)).sum();
    }
}
