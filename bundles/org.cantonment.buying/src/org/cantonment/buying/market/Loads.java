package org.cantonment.buying.market;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Lot;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.range.Seller;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/** What boxes bring: they are opened as a shelf opens them. */
public final class Loads {

    private final Catalogue catalogue;
    private final LocalDate day;
    private final Map<Id, Supply> one = new HashMap<>();

    Loads(Catalogue catalogue, LocalDate day) {
        this.catalogue = catalogue;
        this.day = day;
    }

    /** What the books know, where each lot is a box, too. */
    static Catalogue catalogue(Collection<Range> ranges, Collection<RuleSet> books) {
        List<Range> all = new ArrayList<>();
        for (Range range : ranges) {
            List<Box> boxes = new ArrayList<>(range.boxes());
            for (Seller seller : range.sellers()) {
                for (Lot lot : seller.lots()) {
                    boxes.add(new Box(lot.id(), lot.label(), false, lot.contents(), lot.caps(), List.of(), List.of(),
                            List.of(), List.of(), List.of(), List.of(), lot.notes()));
                }
            }
            all.add(new Range(range.id(), range.label(), range.currency(), range.families(), range.pieces(), range.parts(),
                    range.extras(), range.bits(), boxes, range.sellers(), range.notes()));
        }
        return Catalogue.of(all, books);
    }

    Catalogue catalogue() {
        return catalogue;
    }

    Supply of(Id box, int boxes) {
        return boxes == 1 ? one.computeIfAbsent(box, id -> supply(catalogue, Map.of(id, 1), day))
                : supply(catalogue, Map.of(box, boxes), day);
    }

    int pieces(Id box, int boxes) {
        Supply load = of(box, boxes);
        long pieces = 0;
        for (Stack stack : load.stacks()) {
            pieces += catalogue.isPiece(stack.what()) ? stack.counted() : 0;
        }
        for (Frames frames : load.frames()) {
            pieces += (long) frames.count() * frames.ways().stream().mapToInt(Loads::size).max().orElse(0);
        }
        return (int) Math.min(1_000_000, pieces);
    }

    private static int size(Way way) {
        return way.gives().values().stream().mapToInt(Integer::intValue).sum();
    }

    /** What so many boxes of each kind bring that were bought on a day. */
    public static Supply supply(Catalogue catalogue, Map<Id, Integer> boxes, LocalDate day) {
        Id shelf = Id.of("purchases");
        List<Holding> holdings = new ArrayList<>();
        boxes.forEach((box, count) -> holdings.add(new Holding(shelf.line(holdings.size() + 1), Certainty.KNOWN, count, box,
                List.of(), Optional.empty(), Optional.empty(), Optional.of(day), Optional.empty(), Optional.empty(),
                List.of(), List.of())));
        return Supply.of(catalogue, List.of(new Shelf(shelf, false, List.of(), Optional.empty(), Optional.empty(), holdings,
                List.of(), List.of(), List.of())));
    }
}
