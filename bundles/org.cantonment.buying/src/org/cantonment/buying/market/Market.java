package org.cantonment.buying.market;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Supply;

/**
 * What can be had on a day.
 *
 * @param catalogue what the books know, lots included
 * @param wares in the order of their codes, then of their boxes, then of their sellers
 * @param terms by seller
 * @param unpriced the boxes that no price is known for on that day, with what they bring
 * @param findings what was left out, and why
 */
public record Market(Catalogue catalogue, List<Ware> wares, Map<Id, Terms> terms, Map<Id, Supply> unpriced,
        List<Finding> findings) {

    public Market {
        wares = List.copyOf(wares);
        terms = Map.copyOf(terms);
        unpriced = Collections.unmodifiableMap(new TreeMap<>(unpriced));
        findings = List.copyOf(findings);
    }

    /** The same without these boxes. */
    public Market without(Collection<Id> boxes) {
        return new Market(catalogue, wares.stream().filter(ware -> !boxes.contains(ware.box())).toList(), terms, unpriced,
                findings);
    }

    /** The same from these sellers and makers only; from all if none is named. */
    public Market from(Collection<Id> sellers) {
        return sellers.isEmpty() ? this : new Market(catalogue,
                wares.stream().filter(ware -> sellers.contains(ware.seller())).toList(), terms, unpriced, findings);
    }

    /** The same from those who deliver within so many days. */
    public Market within(int days) {
        return new Market(catalogue, wares.stream().filter(ware -> days(ware) <= days).toList(), terms, unpriced, findings);
    }

    /** What is left to be had after these purchases. */
    public Market after(Map<Id, Integer> boughtByLine) {
        List<Ware> left = new ArrayList<>();
        for (Ware ware : wares) {
            int most = ware.most() - boughtByLine.getOrDefault(ware.line(), 0);
            if (most > 0) {
                left.add(new Ware(ware.line(), ware.box(), ware.boxes(), ware.title(), ware.code(), ware.seller(),
                        ware.price(), ware.cost(), most, ware.load(), ware.pieces()));
            }
        }
        return new Market(catalogue, left, terms, unpriced, findings);
    }

    /** The days until a ware is there. */
    public int days(Ware ware) {
        return Optional.ofNullable(terms.get(ware.seller())).map(one -> one.days().orElse(0)).orElse(0);
    }

    /** The cheapest way to have one of a box, sending left aside. */
    public Optional<Ware> cheapest(Id box) {
        return wares.stream().filter(ware -> ware.box().equals(box) && ware.boxes() == 1)
                .min((one, other) -> one.cost().compareTo(other.cost()));
    }

    /** The boxes on sale, with the wares of each. */
    public Map<Id, List<Ware>> byBox() {
        Map<Id, List<Ware>> boxes = new TreeMap<>();
        wares.forEach(ware -> boxes.computeIfAbsent(ware.box(), id -> new ArrayList<>()).add(ware));
        return boxes;
    }
}
