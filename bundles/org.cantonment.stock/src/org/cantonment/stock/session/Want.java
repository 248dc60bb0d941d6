package org.cantonment.stock.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Accepted;

/** Needs of one player that the very same pieces may fill. */
record Want(int seat, Accepted accepted, List<Requirement> needs) {

    int count() {
        return (int) Math.min(Integer.MAX_VALUE / 8, needs.stream().mapToLong(Requirement::count).sum());
    }

    static List<Want> of(Catalogue catalogue, List<Seat> seats) {
        List<Want> all = new ArrayList<>();
        for (int s = 0; s < seats.size(); s++) {
            Map<Accepted, Want> here = new LinkedHashMap<>();
            for (Requirement need : seats.get(s).needs()) {
                if (need.count() > 0 && need.anyOf().stream().noneMatch(catalogue::isItem)) {
                    Accepted accepted = seats.get(s).allowance().accepted(catalogue, need.anyOf(), need.unit());
                    int seat = s;
                    here.computeIfAbsent(accepted, id -> new Want(seat, id, new ArrayList<>())).needs().add(need);
                }
            }
            all.addAll(here.values());
        }
        return all;
    }
}
