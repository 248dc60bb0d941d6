package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Comparator;
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
import org.cantonment.stock.supply.Way;

/**
 * What pieces cost, roughly, and what is there already. It guides only which lists are tried first: what a plan costs is
 * reckoned by the planner.
 */
public final class Guide {

    /** Nothing is known of shops or shelf: every piece costs alike. */
    public static final Guide NONE = new Guide(null, Map.of(), Supply.NONE);

    /** A piece that nobody sells counts as so dear. */
    static final long NEVER = 1_000_000;

    private static final Pack ALIKE = new Pack(1, 100);
    private static final Pack UNSOLD = new Pack(1, NEVER);
    private static final int PACKS = 4;

    /** So many pieces of a type for so much, in the smallest unit of money. */
    record Pack(int gives, long cost) {

        /**
         * What so many pieces cost about: between their share of the boxes and whole boxes, since what else lies in these may
         * be of use, or not.
         */
        long cost(int count) {
            long boxes = (count + gives - 1) / gives;
            return (cost * boxes + cost * count / gives) / 2;
        }
    }

    /** The piece types that are what a need asks for, and those that may stand in for them. */
    record Kinds(List<Id> exact, List<Id> others) {

        Kinds {
            exact = List.copyOf(exact);
            others = List.copyOf(others);
        }
    }

    private final Catalogue catalogue;
    private final Map<Id, List<Pack>> packs;
    private final Supply shelf;

    private Guide(Catalogue catalogue, Map<Id, List<Pack>> packs, Supply shelf) {
        this.catalogue = catalogue;
        this.packs = packs;
        this.shelf = shelf;
    }

    /** Of a market and a shelf. */
    public static Guide of(Market market, Supply shelf) {
        Map<Id, List<Pack>> packs = new HashMap<>();
        for (Ware ware : market.wares()) {
            types(ware.load()).forEach((type, gives) -> packs.computeIfAbsent(type, key -> new ArrayList<>())
                    .add(new Pack(gives, ware.cost().getAmountMinorLong())));
        }
        packs.replaceAll((type, some) -> some.stream().sorted(Comparator.comparingLong((Pack pack) -> pack.cost(1))
                .thenComparingInt(Pack::gives)).limit(PACKS).toList());
        return new Guide(market.catalogue(), packs, shelf);
    }

    /** How many of each type there can be at the most. */
    private static Map<Id, Integer> types(Supply supply) {
        Map<Id, Integer> types = new HashMap<>();
        supply.stacks().forEach(stack -> types.merge(stack.what(), stack.counted(), Integer::sum));
        for (Frames frames : supply.frames()) {
            Map<Id, Integer> most = new HashMap<>();
            for (Way way : frames.ways()) {
                way.gives().forEach((type, gives) -> most.merge(type, frames.count() * gives, Math::max));
            }
            most.forEach((type, count) -> types.merge(type, count, Integer::sum));
        }
        types.values().removeIf(count -> count < 1);
        return types;
    }

    /** What may fill a need. Items of a rule set are none. */
    Kinds kinds(List<Id> anyOf, Id unit, Allowance allowance) {
        if (catalogue == null) {
            return new Kinds(anyOf.stream().sorted().toList(), List.of());
        }
        Set<Id> exact = new TreeSet<>(catalogue.meant(anyOf));
        Accepted accepted = allowance.accepted(catalogue, anyOf, Optional.of(unit));
        Set<Id> others = new TreeSet<>(accepted.types().keySet());
        accepted.standIns().forEach((line, more) -> {
            if (allowance.standIns().get(line).percent().isEmpty()) {
                others.addAll(more);
            }
        });
        exact.removeIf(catalogue::isItem);
        others.removeIf(type -> catalogue.isItem(type) || exact.contains(type));
        return new Kinds(List.copyOf(exact), List.copyOf(others));
    }

    /** What so many pieces of any of these cost, roughly, in the smallest unit of money. */
    long cost(Kinds kinds, int count) {
        if (kinds.exact().isEmpty() || count == 0) {
            return 0;
        }
        long least = Long.MAX_VALUE;
        for (List<Id> some : List.of(kinds.exact(), kinds.others())) {
            for (Id type : some) {
                for (Pack pack : packs(type)) {
                    least = Math.min(least, pack.cost(count));
                }
            }
            if (least < Long.MAX_VALUE) {
                return least;
            }
        }
        return UNSOLD.cost(count);
    }

    private List<Pack> packs(Id type) {
        return catalogue == null ? List.of(ALIKE) : packs.getOrDefault(type, List.of());
    }

    /** The type of these that would be bought. */
    Optional<Id> bought(Kinds kinds) {
        return kinds.exact().stream().filter(type -> !packs(type).isEmpty()).min(Comparator.comparingLong((Id type) ->
                packs(type).get(0).cost(1))).or(() -> kinds.exact().stream().findFirst());
    }

    /** What is there. */
    Supply shelf() {
        return shelf;
    }
}
