package org.cantonment.stock.supply;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.Catalogue;

/**
 * What there is, whoever owns it.
 *
 * @param stacks what is ready to hand, in the order of the ids, one stack for each type
 * @param frames parts unbuilt, or built so that they can be rebuilt
 * @param caps caps over what is built from one box
 * @param findings where a shelf claims what cannot be; every claim is counted as far as it can be true
 */
public record Supply(List<Stack> stacks, List<Frames> frames, List<BoxCap> caps, List<Finding> findings) {

    /** Nothing at all. */
    public static final Supply NONE = new Supply(List.of(), List.of(), List.of(), List.of());

    public Supply {
        stacks = List.copyOf(stacks);
        frames = List.copyOf(frames);
        caps = List.copyOf(caps);
        findings = List.copyOf(findings);
    }

    /** Shelves as they lie, all together. */
    public static Supply of(Catalogue catalogue, Collection<Shelf> shelves) {
        return new ShelfCounter(catalogue).count(shelves);
    }

    /** Built pieces and nothing else, all of them counted. */
    public static Supply pieces(Map<Id, Integer> counts) {
        List<Stack> stacks = new ArrayList<>();
        new TreeMap<>(counts).forEach((what, count) -> stacks.add(new Stack(what, count, 0, 0)));
        return new Supply(stacks, List.of(), List.of(), List.of());
    }

    /** This and that together. */
    public Supply plus(Supply other) {
        Map<Id, Stack> all = new TreeMap<>();
        stacks.forEach(stack -> all.merge(stack.what(), stack, Stack::plus));
        other.stacks.forEach(stack -> all.merge(stack.what(), stack, Stack::plus));
        List<Frames> allFrames = new ArrayList<>(frames);
        allFrames.addAll(other.frames);
        List<BoxCap> allCaps = new ArrayList<>(caps);
        for (BoxCap cap : other.caps) {
            allCaps.add(new BoxCap(cap.cap(), cap.most(), cap.of(),
                    cap.frames().stream().map(at -> at + frames.size()).toList()));
        }
        List<Finding> allFindings = new ArrayList<>(findings);
        allFindings.addAll(other.findings);
        return new Supply(new ArrayList<>(all.values()), allFrames, allCaps, allFindings);
    }
}
