package org.cantonment.stock.supply;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.When;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Printing;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.stock.Catalogue;

/**
 * Opens boxes. A box whose printing nobody knows holds for certain what every printing of it holds that there was when it
 * came; what only some hold is unknown, and the strictest of their caps stand.
 */
final class Opener {

    private record Inside(List<Content> contents, List<Cap> caps) {
    }

    private final Catalogue catalogue;
    private final Set<Id> opening = new HashSet<>();

    Opener(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Each chest is one box, or several alike ones together; boxes in boxes come after what holds them. */
    List<Chest> open(Holding holding, Box box, int boxes, boolean together) {
        List<Chest> chests = new ArrayList<>();
        open(inside(holding, box), box.id(), boxes, holding.certainty(), together, chests);
        return chests;
    }

    private void open(Inside inside, Id box, int boxes, Certainty certainty, boolean together, List<Chest> chests) {
        if (!opening.add(box)) {
            return;
        }
        boolean apart = !together && !inside.caps().isEmpty() && boxes <= ShelfCounter.MOST_APART;
        for (int i = 0; i < (apart ? boxes : 1); i++) {
            fill(inside, apart ? 1 : boxes, certainty, together, chests);
        }
        opening.remove(box);
    }

    private void fill(Inside inside, int boxes, Certainty certainty, boolean together, List<Chest> chests) {
        Chest chest = new Chest();
        chests.add(chest);
        inside.caps().forEach(cap -> chest.cap(cap, boxes, catalogue.meant(cap.of())));
        for (Content content : inside.contents()) {
            Certainty both = content.certainty().compareTo(certainty) > 0 ? content.certainty() : certainty;
            int count = Counts.times(content.count(), boxes);
            Optional<Box> inner = catalogue.box(content.what());
            if (inner.isPresent()) {
                open(inside(inner.get().contents(), inner.get().caps(), inner.get().printings()), content.what(), count,
                        both, together, chests);
            } else {
                chest.add(content.what(), both, count);
            }
        }
    }

    private static Inside inside(Holding holding, Box box) {
        if (holding.printing().isPresent()) {
            for (Printing printing : box.printings()) {
                if (printing.id().equals(holding.printing().get())) {
                    return new Inside(printing.contents(), printing.caps());
                }
            }
        }
        return inside(box.contents(), box.caps(),
                box.printings().stream().filter(printing -> wasOut(printing, holding.on())).toList());
    }

    private static boolean wasOut(Printing printing, Optional<LocalDate> on) {
        for (When condition : printing.when().conditions()) {
            if (on.isPresent() && condition instanceof Reach reach && reach.from().isPresent()
                    && reach.from().get() instanceof OnDate from && from.date().isAfter(on.get())) {
                return false;
            }
        }
        return true;
    }

    private static Inside inside(List<Content> own, List<Cap> caps, List<Printing> printings) {
        List<Inside> may = new ArrayList<>();
        if (!own.isEmpty() || printings.isEmpty()) {
            may.add(new Inside(own, caps));
        }
        printings.forEach(printing -> may.add(new Inside(printing.contents(), printing.caps())));
        return may.size() == 1 ? may.get(0) : new Inside(common(may), strictest(may));
    }

    private static List<Content> common(List<Inside> may) {
        List<Map<Id, int[]>> counts = may.stream().map(Opener::counts).toList();
        Set<Id> all = new TreeSet<>();
        counts.forEach(one -> all.addAll(one.keySet()));
        List<Content> common = new ArrayList<>();
        for (Id what : all) {
            int known = Integer.MAX_VALUE;
            int counted = Integer.MAX_VALUE;
            int most = 0;
            for (Map<Id, int[]> one : counts) {
                int[] here = one.getOrDefault(what, new int[3]);
                known = Math.min(known, here[0]);
                counted = Math.min(counted, here[0] + here[1]);
                most = Math.max(most, here[0] + here[1] + here[2]);
            }
            common.add(new Content(Certainty.KNOWN, known, what));
            common.add(new Content(Certainty.GUESSED, counted - known, what));
            common.add(new Content(Certainty.UNKNOWN, most - counted, what));
        }
        common.removeIf(content -> content.count() == 0);
        return common;
    }

    private static Map<Id, int[]> counts(Inside inside) {
        Map<Id, int[]> counts = new TreeMap<>();
        for (Content content : inside.contents()) {
            int[] here = counts.computeIfAbsent(content.what(), id -> new int[3]);
            here[content.certainty().ordinal()] = Counts.sum(here[content.certainty().ordinal()], content.count());
        }
        return counts;
    }

    private static List<Cap> strictest(List<Inside> may) {
        Map<Set<Id>, Cap> caps = new LinkedHashMap<>();
        for (Inside inside : may) {
            for (Cap cap : inside.caps()) {
                caps.merge(Set.copyOf(cap.of()), cap, (one, other) -> one.most() <= other.most() ? one : other);
            }
        }
        return List.copyOf(caps.values());
    }
}
