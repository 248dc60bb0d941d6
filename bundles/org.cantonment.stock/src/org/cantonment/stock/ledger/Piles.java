package org.cantonment.stock.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Supply;

/** All shelves while deeds move things between them. Somebody's things are taken from his own shelf before a shared one. */
final class Piles {

    private static final Id CLUB = Id.of("the-club");

    private final Catalogue catalogue;
    private final Map<Id, Pile> piles = new TreeMap<>();
    private final Map<Id, Set<Id>> owners = new TreeMap<>();
    private final Set<Id> fresh = new TreeSet<>();
    private final Map<Id, List<Finding>> claims = new TreeMap<>();

    Piles(Catalogue catalogue, Collection<Shelf> shelves) {
        this.catalogue = catalogue;
        for (Shelf shelf : shelves) {
            Supply supply = Supply.of(catalogue, List.of(shelf));
            claims.computeIfAbsent(shelf.id(), id -> new ArrayList<>()).addAll(supply.findings());
            if (piles.containsKey(shelf.id())) {
                piles.get(shelf.id()).put(supply);
            } else {
                piles.put(shelf.id(), new Pile(catalogue, supply));
                owners.put(shelf.id(), shelf.club() ? Set.of() : new TreeSet<>(shelf.owners()));
            }
        }
    }

    /** Somebody's piles, his own first; the club's if nobody is named. */
    private List<Pile> of(Optional<Id> who) {
        List<Id> his = new ArrayList<>(owners.keySet().stream().filter(pile -> who.map(player ->
                owners.get(pile).contains(player)).orElse(owners.get(pile).isEmpty())).toList());
        his.sort(Comparator.comparingInt((Id pile) -> owners.get(pile).size()).thenComparing(pile -> pile));
        if (his.isEmpty()) {
            Id one = who.orElse(CLUB);
            piles.put(one, new Pile(catalogue, Supply.NONE));
            owners.put(one, who.map(Set::of).orElse(Set.of()));
            fresh.add(one);
            his.add(one);
        }
        return his.stream().map(piles::get).toList();
    }

    /** Whether nobody wrote down what somebody has, so that nothing he does can be wrong. */
    private boolean unwritten(Optional<Id> who) {
        of(who);
        return fresh.contains(who.orElse(CLUB));
    }

    int has(Optional<Id> who, Id what) {
        return unwritten(who) ? Integer.MAX_VALUE / 4 : there(who, what);
    }

    private int there(Optional<Id> who, Id what) {
        return (int) Math.min(Integer.MAX_VALUE / 4, of(who).stream().mapToLong(pile -> pile.has(what)).sum());
    }

    int stacked(Optional<Id> who, Id what) {
        return of(who).stream().mapToInt(pile -> pile.stacked(what)).sum();
    }

    void put(Optional<Id> who, Supply supply) {
        of(who).get(0).put(supply);
    }

    /** Takes as many as there are, at most so many. */
    Supply take(Optional<Id> who, Id what, int count) {
        Supply taken = Supply.NONE;
        int left = count;
        int there = there(who, what);
        if (unwritten(who) && there < count) {
            put(who, Pile.things(catalogue, what, count - there, Optional.empty()));
        }
        for (Pile pile : of(who)) {
            int here = Math.min(left, pile.has(what));
            taken = taken.plus(pile.take(what, here));
            left -= here;
        }
        return taken;
    }

    /** Builds what can be built; says what could not. */
    Map<Id, Integer> build(Optional<Id> who, Map<Id, Integer> wanted) {
        Map<Id, Integer> left = wanted;
        for (Pile pile : of(who)) {
            left = left.isEmpty() ? left : Carpenter.make(pile, left, false);
        }
        return unwritten(who) ? Map.of() : left;
    }

    void count(Optional<Id> who, Id what, int count) {
        List<Pile> all = of(who);
        all.get(0).count(what, count);
        all.subList(1, all.size()).forEach(pile -> pile.count(what, 0));
    }

    /** What lies where, with what the shelves claimed that cannot be. */
    Map<Id, Supply> supplies() {
        Map<Id, Supply> all = new TreeMap<>();
        piles.forEach((id, pile) -> {
            Supply supply = pile.supply();
            all.put(id, new Supply(supply.stacks(), supply.frames(), supply.caps(), claims.getOrDefault(id, List.of())));
        });
        return all;
    }

    /** Where shelves claim what cannot be. */
    List<Finding> claims() {
        return claims.values().stream().flatMap(List::stream).toList();
    }

    Map<Id, Set<Id>> owners() {
        return owners;
    }
}
