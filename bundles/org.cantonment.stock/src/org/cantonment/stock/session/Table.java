package org.cantonment.stock.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Supply;

/**
 * The question of an evening in numbers.
 *
 * @param lenders everybody who has pieces; the players of the evening come first, in the order of their seats
 * @param lumps the frames of the players of the evening: only their owner builds them, nobody lends what is not built
 */
record Table(Catalogue catalogue, List<Seat> seats, List<Lender> lenders, List<Want> wants, List<Lump> lumps) {

    /** Frames of a player; their place in his supply. */
    record Lump(int seat, int place, Frames frames) {
    }

    static Table of(Catalogue catalogue, List<Seat> seats, List<Lender> lenders) {
        Map<Id, Supply> supplies = new HashMap<>();
        Map<Id, Set<Id>> sharing = new HashMap<>();
        lenders.forEach(lender -> {
            supplies.merge(lender.who(), lender.supply(), Supply::plus);
            sharing.put(lender.who(), lender.sharing());
        });
        List<Lender> ordered = new ArrayList<>();
        seats.forEach(seat -> ordered.add(new Lender(seat.player(), supplies.getOrDefault(seat.player(), Supply.NONE))));
        seats.forEach(seat -> supplies.remove(seat.player()));
        new TreeSet<>(supplies.keySet()).forEach(who -> ordered.add(new Lender(who, supplies.get(who),
                sharing.get(who))));
        List<Lump> lumps = new ArrayList<>();
        for (int s = 0; s < seats.size(); s++) {
            List<Frames> frames = ordered.get(s).supply().frames();
            for (int f = 0; f < frames.size(); f++) {
                lumps.add(new Lump(s, f, frames.get(f)));
            }
        }
        return new Table(catalogue, List.copyOf(seats), ordered, Want.of(catalogue, seats), lumps);
    }

    /** The same where somebody has something else. */
    Table with(int seat, Supply supply) {
        List<Lender> others = new ArrayList<>(lenders);
        others.set(seat, new Lender(seats.get(seat).player(), supply));
        return of(catalogue, seats, others);
    }

    /** Whether what a lender has is the player's of this seat. */
    boolean owns(int lender, int seat) {
        return lender == seat || lenders.get(lender).sharing().contains(seats.get(seat).player());
    }

    int needed() {
        return wants.stream().mapToInt(Want::count).sum();
    }

    /** The caps over frames of a seat. */
    List<BoxCap> caps(int seat) {
        return lenders.get(seat).supply().caps();
    }
}
