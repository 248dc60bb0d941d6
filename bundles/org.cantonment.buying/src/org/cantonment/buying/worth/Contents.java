package org.cantonment.buying.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.Ware;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/**
 * What is in a box for sure, as needs. A part that can be built in one way only is what it is built as; any other must be there as a
 * part that can be built as all the same, so that the choice is had, too.
 */
final class Contents {

    private final Market market;
    private final Map<Id, Integer> pieces = new TreeMap<>();
    private final Map<Id, Integer> extras = new TreeMap<>();
    private final Map<Id, Integer> parts = new TreeMap<>();
    private final Map<Id, List<Way>> ways = new TreeMap<>();
    private final List<String> unsure = new ArrayList<>();

    Contents(Market market, Supply load) {
        this.market = market;
        for (Stack stack : load.stacks()) {
            if (stack.known() > 0) {
                (market.catalogue().isPiece(stack.what()) ? pieces : extras).merge(stack.what(), stack.known(), Integer::sum);
            }
            if (stack.guessed() > 0) {
                unsure.add(stack.guessed() + " of " + title(stack.what()) + " that are guessed");
            }
            if (stack.unknown() > 0) {
                unsure.add("up to " + stack.unknown() + " of " + title(stack.what()) + " that nobody has counted");
            }
        }
        for (Frames frames : load.frames()) {
            if (frames.guessed()) {
                unsure.add(frames.count() + " of " + title(frames.part()) + " that are guessed");
            } else if (frames.ways().size() == 1) {
                frames.ways().get(0).gives().forEach((type, gives) ->
                        pieces.merge(type, gives * frames.count(), Integer::sum));
            } else {
                parts.merge(frames.part(), frames.count(), Integer::sum);
                ways.put(frames.part(), frames.ways());
            }
        }
    }

    private String title(Id what) {
        return market.catalogue().title(what);
    }

    /** What may lie in it, too, in words. */
    List<String> unsure() {
        return unsure;
    }

    List<Requirement> needs() {
        List<Requirement> needs = new ArrayList<>();
        pieces.forEach((type, count) -> needs.add(new Requirement(type, count, List.of(type))));
        parts.forEach((part, count) -> needs.add(new Requirement(part, count, List.copyOf(like(part)))));
        return needs;
    }

    Map<Id, Integer> extras() {
        return extras;
    }

    /** The parts on sale that can be built as whatever this one can. */
    private Set<Id> like(Id part) {
        Set<Id> like = new TreeSet<>();
        like.add(part);
        for (Ware ware : market.wares()) {
            for (Frames frames : ware.load().frames()) {
                if (ways.get(part).stream().allMatch(way -> frames.ways().stream().anyMatch(other -> gives(other, way)))) {
                    like.add(frames.part());
                }
            }
        }
        return like;
    }

    private static boolean gives(Way way, Way asked) {
        return asked.gives().entrySet().stream()
                .allMatch(one -> way.gives().getOrDefault(one.getKey(), 0) >= one.getValue());
    }
}
