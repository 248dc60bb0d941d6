package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.buying.formulate.Shares;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;

/** What is bought and stands nowhere, bits aside: of each type as many as were bought, but no more than there are beside those in use. */
final class Leftovers {

    private final Catalogue catalogue;
    private final Shares shares;
    private final Supply shelf;
    private final List<Purchase> purchases;
    private final Map<Id, Integer> left = new TreeMap<>();

    Leftovers(Catalogue catalogue, Shares shares, Supply shelf, List<Purchase> purchases) {
        this.catalogue = catalogue;
        this.shares = shares;
        this.shelf = shelf;
        this.purchases = purchases;
    }

    /**
     * All that is left over.
     *
     * @param used what stands for each target, by types that tell whose they are
     * @param chosen what is built by choice, which is all that comes loose at the bench
     * @param all the same, and what is built without a choice
     * @param alone what is built for each target alone
     */
    List<Leftover> of(List<Map<Id, Integer>> used, List<Building> chosen, List<Building> all, List<List<Building>> alone) {
        pieces(most(used), all);
        Map<Id, Integer> own = parts(shelf);
        Map<Id, Integer> built = inUse(chosen, all, alone);
        bought(purchases, shares).forEach((part, count) -> add(part, count, own, built));
        return left.entrySet().stream().map(one -> new Leftover(one.getKey(), one.getValue())).toList();
    }

    private void pieces(Map<Id, Integer> used, List<Building> buildings) {
        Map<Id, Integer> there = new TreeMap<>();
        shelf.stacks().forEach(stack -> there.merge(stack.what(), stack.counted(), Integer::sum));
        Map<Id, Integer> bought = new TreeMap<>();
        for (Purchase one : purchases) {
            for (Stack stack : shares.load(one.ware()).stacks()) {
                bought.merge(stack.what(), stack.counted() * one.count(), Integer::sum);
            }
        }
        for (Building one : buildings) {
            // What comes loose is taken apart again: it is never a piece that is left over.
            if (one.fixing() == Fixing.GLUED) {
                one.gives().forEach((type, gives) -> bought.merge(type, gives * one.count(), Integer::sum));
            }
        }
        bought.forEach((type, count) -> add(type, count, there, used));
    }

    private void add(Id what, int bought, Map<Id, Integer> own, Map<Id, Integer> used) {
        int count = Math.min(bought, bought + own.getOrDefault(what, 0) - used.getOrDefault(what, 0));
        if (count > 0 && !catalogue.isBits(shares.plain(what))) {
            left.merge(shares.plain(what), count, Integer::sum);
        }
    }

    /** What is glued stays; what comes loose is in use as often as it is at any one time. */
    private static Map<Id, Integer> inUse(List<Building> chosen, List<Building> all, List<List<Building>> alone) {
        Map<Integer, List<Building>> benches = new TreeMap<>();
        List<Building> lasting = new ArrayList<>(all);
        for (Building one : chosen) {
            if (one.fixing() != Fixing.GLUED) {
                benches.computeIfAbsent(one.stage(), stage -> new ArrayList<>()).add(one);
                lasting.remove(one);
            }
        }
        Map<Id, Integer> parts = counted(lasting);
        for (Collection<List<Building>> times : List.of(benches.values(), alone)) {
            most(times.stream().map(Leftovers::counted).toList()).forEach((part, count) -> parts.merge(part, count, Integer::sum));
        }
        return parts;
    }

    private static Map<Id, Integer> counted(List<Building> buildings) {
        Map<Id, Integer> parts = new TreeMap<>();
        buildings.forEach(one -> parts.merge(one.part(), one.count(), Integer::sum));
        return parts;
    }

    private static Map<Id, Integer> most(List<Map<Id, Integer>> counts) {
        Map<Id, Integer> most = new TreeMap<>();
        counts.forEach(one -> one.forEach((what, count) -> most.merge(what, count, Math::max)));
        return most;
    }

    /** How many of each part there are. */
    static Map<Id, Integer> parts(Supply supply) {
        Map<Id, Integer> parts = new TreeMap<>();
        for (Frames frames : supply.frames()) {
            parts.merge(frames.part(), frames.count(), Integer::sum);
        }
        return parts;
    }

    /** How many of each part are bought. */
    static Map<Id, Integer> bought(List<Purchase> purchases, Shares shares) {
        Map<Id, Integer> parts = new TreeMap<>();
        for (Purchase one : purchases) {
            parts(shares.load(one.ware())).forEach((part, count) -> parts.merge(part, count * one.count(), Integer::sum));
        }
        return parts;
    }
}
