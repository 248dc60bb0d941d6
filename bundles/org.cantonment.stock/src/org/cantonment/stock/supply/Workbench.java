package org.cantonment.stock.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.shelf.Held;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Made;
import org.cantonment.domain.shelf.MadeAct;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.solve.Covering;

/**
 * What became of the contents of one holding. What was built or lost is taken out of the chest, by the fewest parts that
 * account for it; what no line mentions lies there still. What the contents cannot give is found and not counted.
 */
final class Workbench {

    /** The code of a claim that goes beyond what there was. */
    static final String BEYOND = "shelf.beyond-contents";

    /** The parts in the chest, with all the ways to build them. */
    private record Kit(List<Part> parts, List<List<Way>> ways, int[] counts) {
    }

    private final Catalogue catalogue;
    private final Holding holding;
    private final Chest chest;
    private final ShelfCounter counter;

    Workbench(Catalogue catalogue, Holding holding, Chest chest, ShelfCounter counter) {
        this.catalogue = catalogue;
        this.holding = holding;
        this.chest = chest;
        this.counter = counter;
    }

    void settle() {
        work(MadeAct.LOST);
        work(MadeAct.BUILT);
        leave();
    }

    private void work(MadeAct act) {
        Map<Id, Integer> toBuild = new TreeMap<>();
        Kit kit = kit();
        int[] built = new int[kit.ways().stream().mapToInt(List::size).sum()];
        for (Made made : holding.made()) {
            for (Held held : made.act() == act ? made.things() : List.<Held>of()) {
                int direct = chest.takeUpTo(held.what(), held.count());
                if (act == MadeAct.BUILT) {
                    stack(held.what(), direct);
                }
                int wanted = held.count() - direct;
                int before = toBuild.getOrDefault(held.what(), 0);
                int got = most(kit, toBuild, held.what(), before, wanted);
                toBuild.put(held.what(), before + got);
                if (got < wanted) {
                    beyond(made.id(), held, direct + got, act == MadeAct.BUILT ? "built" : "lost");
                }
            }
        }
        toBuild.values().removeIf(count -> count == 0);
        if (!toBuild.isEmpty()) {
            built = cover(kit, toBuild).orElseThrow();
        }
        use(kit, built, toBuild, act);
    }

    private Kit kit() {
        List<Part> parts = new ArrayList<>();
        List<List<Way>> ways = new ArrayList<>();
        for (Id what : chest.things().keySet()) {
            catalogue.part(what).filter(part -> chest.counted(what) > 0).ifPresent(part -> {
                parts.add(part);
                ways.add(ShelfCounter.ways(part));
            });
        }
        return new Kit(parts, ways, parts.stream().mapToInt(part -> free(part.id())).toArray());
    }

    /** What is said to be left was not built. */
    private int free(Id part) {
        int left = 0;
        for (Made made : holding.made()) {
            for (Held held : made.act() == MadeAct.LEFT ? made.things() : List.<Held>of()) {
                left = held.what().equals(part) ? Counts.sum(left, held.count()) : left;
            }
        }
        return Math.max(0, chest.counted(part) - left);
    }

    /** So many more of it, at most so many as wanted, can have been built beside the rest. */
    private int most(Kit kit, Map<Id, Integer> beside, Id what, int before, int wanted) {
        int low = 0;
        int high = wanted;
        while (low < high) {
            int middle = low + (high - low + 1) / 2;
            Map<Id, Integer> trial = new TreeMap<>(beside);
            trial.put(what, before + middle);
            if (cover(kit, trial).isPresent()) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private static Optional<int[]> cover(Kit kit, Map<Id, Integer> wanted) {
        List<Id> types = List.copyOf(wanted.keySet());
        List<Covering.Option> options = new ArrayList<>();
        for (int p = 0; p < kit.parts().size(); p++) {
            for (Way way : kit.ways().get(p)) {
                int[] gives = types.stream().mapToInt(type -> way.gives().getOrDefault(type, 0)).toArray();
                options.add(new Covering.Option(p, gives, 0, kit.counts()[p]));
            }
        }
        return Optional.ofNullable(Covering.of(options.toArray(Covering.Option[]::new), kit.counts(), new Covering.Limit[0],
                types.stream().mapToInt(wanted::get).toArray()).built());
    }

    /** Takes the parts used out of the chest, and puts what was made of them on the shelf. */
    private void use(Kit kit, int[] built, Map<Id, Integer> made, MadeAct act) {
        Map<Id, Integer> fixed = new TreeMap<>(made);
        int at = 0;
        for (int p = 0; p < kit.parts().size(); p++) {
            Part part = kit.parts().get(p);
            Fixing fixing = ShelfCounter.fixing(holding, part);
            for (int w = 0; w < kit.ways().get(p).size(); w++, at++) {
                chest.take(part.id(), built[at]);
                if (act == MadeAct.BUILT && fixing != Fixing.GLUED && built[at] > 0) {
                    int frames = built[at];
                    counter.rebuildable(part, frames, holding.certainty(), w, fixing);
                    kit.ways().get(p).get(w).gives().forEach((type, count) -> fixed.computeIfPresent(type,
                            (id, left) -> Math.max(0, left - Counts.times(count, frames))));
                }
            }
        }
        fixed.forEach((type, count) -> {
            chest.built(type, count);
            if (act == MadeAct.BUILT) {
                stack(type, count);
            }
        });
    }

    /** What the owner says is left is what is left; the rest is gone. */
    private void leave() {
        for (Made made : holding.made()) {
            for (Held held : made.act() == MadeAct.LEFT ? made.things() : List.<Held>of()) {
                int there = chest.counted(held.what());
                if (held.count() > there) {
                    beyond(made.id(), held, there, "left");
                }
                chest.take(held.what(), Math.max(0, there - held.count()));
            }
        }
    }

    private void stack(Id what, int count) {
        switch (holding.certainty()) {
            case KNOWN -> counter.stack(new Stack(what, count, 0, 0));
            case GUESSED -> counter.stack(new Stack(what, 0, count, 0));
            case UNKNOWN -> counter.stack(new Stack(what, 0, 0, count));
        }
    }

    private void beyond(Id at, Held held, int counted, String act) {
        counter.find(Finding.of(BEYOND, Severity.CAUTION, at, "It says that " + held.count() + " of "
                + catalogue.title(held.what()) + " were " + act + ", but " + holding.count() + " of "
                + catalogue.title(holding.what()) + " can account for " + counted + " at the most; so many are counted."));
    }
}
