package org.cantonment.rules.muster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Span;
import org.cantonment.rules.place.Bay;
import org.cantonment.rules.place.Placement;
import org.cantonment.rules.place.Placer;
import org.cantonment.rules.place.Slot;
import org.cantonment.rules.place.Supply;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.SupportView;

/**
 * Who stands in which support of the list: all under the word support, and units at the top of a list beside formations.
 *
 * @param children the nodes that want a place, in the order of the list
 * @param groups for each support how many times its rooms hold
 * @param placement by the numbers of children and supports
 */
public record Supporting(List<Node> children, long[] groups, Placement placement) {

    static Supporting of(Muster muster, CancelToken cancel) {
        List<Node> children = new ArrayList<>();
        List<Supply> supplies = new ArrayList<>();
        List<SupportView> supports = muster.ruling().supports();
        boolean loose = muster.ruling().hasFormations();
        for (Node node : muster.nodes()) {
            if (node.choice != null && (node.support || loose && node.parent < 0 && node.unit() != null)) {
                children.add(node);
                supplies.add(new Supply(node.choice.index(), (int) node.copies, pin(node, supports)));
            }
        }
        long[] groups = new long[supports.size()];
        List<Slot> slots = new ArrayList<>();
        for (SupportView support : supports) {
            long times = support.per().empty() ? 1 : muster.count(support.per()) / Math.max(1, support.perCount());
            groups[support.index()] = support.permission().allowed() ? times : 0;
            slots.add(slot(support, groups[support.index()]));
        }
        Placement placement = Placer.place(supplies, slots, cancel);
        for (int i = 0; i < children.size(); i++) {
            if (placement.placed()[i] > 0) {
                children.get(i).supports = Arrays.copyOf(placement.where()[i], supports.size());
            }
        }
        return new Supporting(children, groups, placement);
    }

    private static Slot slot(SupportView support, long times) {
        List<Bay> bays = new ArrayList<>();
        for (Room room : support.rooms()) {
            int min = (int) Math.min(Span.UNBOUNDED, room.span().min() * times);
            int max = (int) Math.min(Span.UNBOUNDED, room.span().max() * times);
            bays.add(new Bay(min, max, room.of()));
        }
        return new Slot(bays);
    }

    private static int pin(Node node, List<SupportView> supports) {
        if (node.entry.billet().isPresent()) {
            for (SupportView support : supports) {
                if (support.id().name().equals(node.entry.billet().get())) {
                    return support.index();
                }
            }
        }
        return -1;
    }
}
