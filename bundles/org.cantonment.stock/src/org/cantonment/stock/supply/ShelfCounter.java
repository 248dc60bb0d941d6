package org.cantonment.stock.supply;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Cap;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.Catalogue;

/** Counts what lies on shelves. */
final class ShelfCounter {

    /** Boxes with caps are told apart up to this number of them; more share their caps. */
    static final int MOST_APART = 60;

    private final Catalogue catalogue;
    private final Opener opener;
    private final Map<Id, Stack> stacks = new TreeMap<>();
    private final List<Frames> capped = new ArrayList<>();
    private final List<BoxCap> caps = new ArrayList<>();
    private final Map<Frames, Integer> loose = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    ShelfCounter(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.opener = new Opener(catalogue);
    }

    Supply count(Collection<Shelf> shelves) {
        for (Shelf shelf : shelves) {
            shelf.holdings().forEach(this::count);
        }
        List<Frames> frames = new ArrayList<>(capped);
        loose.forEach((one, count) -> frames.add(
                new Frames(one.part(), count, one.guessed(), one.ways(), one.built(), one.fixing())));
        return new Supply(new ArrayList<>(stacks.values()), frames, caps, findings);
    }

    private void count(Holding holding) {
        if (holding.count() < 1) {
            return;
        }
        int count = Math.min(Counts.MOST, holding.count());
        Optional<Box> box = catalogue.box(holding.what());
        List<Chest> chests = new ArrayList<>();
        if (box.isPresent()) {
            chests.addAll(opener.open(holding, box.get(), count, !holding.made().isEmpty()));
        } else {
            Chest chest = new Chest();
            chest.add(holding.what(), holding.certainty(), count);
            chests.add(chest);
        }
        if (!holding.made().isEmpty()) {
            Chest all = new Chest();
            chests.forEach(all::add);
            chests = List.of(all);
            new Workbench(catalogue, holding, all, this).settle();
        }
        chests.forEach(chest -> shelve(holding, chest));
    }

    /** What is in the chest, as it is. */
    private void shelve(Holding holding, Chest chest) {
        List<Integer> places = new ArrayList<>();
        chest.things().forEach((what, counts) -> {
            Optional<Part> part = catalogue.part(what);
            if (part.isEmpty()) {
                stack(new Stack(what, counts[0], counts[1], counts[2]));
                return;
            }
            for (Certainty certainty : List.of(Certainty.KNOWN, Certainty.GUESSED)) {
                frames(chest, part.get(), counts[certainty.ordinal()], certainty, -1, fixing(holding, part.get()), places);
            }
            if (counts[2] > 0) {
                stack(new Stack(what, 0, 0, counts[2]));
            }
        });
        cap(chest, places);
    }

    private void frames(Chest chest, Part part, int count, Certainty certainty, int built, Fixing fixing, List<Integer> at) {
        List<Way> ways = ways(part);
        if (count < 1 || ways.isEmpty()) {
            return;
        }
        boolean guessed = certainty != Certainty.KNOWN;
        if (chest.caps().stream().anyMatch(cap -> limits(cap, ways))) {
            at.add(capped.size());
            capped.add(new Frames(part.id(), count, guessed, ways, built, fixing));
        } else {
            loose.merge(new Frames(part.id(), 1, guessed, ways, built, fixing), count, Counts::sum);
        }
    }

    private static boolean limits(Chest.Over cap, List<Way> ways) {
        return ways.stream().anyMatch(way -> way.gives().keySet().stream().anyMatch(cap.of()::contains));
    }

    private void cap(Chest chest, List<Integer> places) {
        for (Chest.Over cap : chest.caps()) {
            List<Integer> under = places.stream().filter(at -> limits(cap, capped.get(at).ways())).toList();
            if (!under.isEmpty()) {
                caps.add(new BoxCap(cap.cap(), cap.most(), cap.of(), under));
            }
        }
    }

    /** Frames that were built and can be rebuilt. */
    void rebuildable(Part part, int count, Certainty certainty, int built, Fixing fixing) {
        if (certainty != Certainty.UNKNOWN) {
            frames(new Chest(), part, count, certainty, built, fixing, new ArrayList<>());
        }
    }

    void stack(Stack stack) {
        if (stack.counted() > 0 || stack.unknown() > 0) {
            stacks.merge(stack.what(), stack, Stack::plus);
        }
    }

    void find(Finding finding) {
        findings.add(finding);
    }

    static Fixing fixing(Holding holding, Part part) {
        return holding.fixing().orElse(part.fixing());
    }

    private static boolean within(Cap cap, Map<Id, Integer> gives) {
        return gives.entrySet().stream().filter(one -> cap.of().contains(one.getKey())).mapToInt(Map.Entry::getValue)
                .sum() <= cap.most();
    }

    /** The ways to build a part, caps of the part itself kept: a way that alone goes beyond one is none. */
    static List<Way> ways(Part part) {
        List<Way> ways = new ArrayList<>();
        part.builds().forEach(build -> {
            Map<Id, Integer> gives = counted(build.gives());
            if (!gives.isEmpty() && part.caps().stream().allMatch(cap -> within(cap, gives))) {
                ways.add(new Way(build.id(), gives, counted(build.leaves())));
            }
        });
        return ways;
    }

    private static Map<Id, Integer> counted(List<Content> contents) {
        Map<Id, Integer> counts = new TreeMap<>();
        for (Content content : contents) {
            if (content.certainty() != Certainty.UNKNOWN && content.count() > 0) {
                counts.merge(content.what(), content.count(), Counts::sum);
            }
        }
        return counts;
    }
}
