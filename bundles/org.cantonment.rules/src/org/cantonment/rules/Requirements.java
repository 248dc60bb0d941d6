package org.cantonment.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.muster.Wants;
import org.cantonment.rules.view.Ruling;

/** What a list needs on the table: the pieces and items of every entry, strengths and options reckoned in. */
public final class Requirements {

    private Requirements() {
    }

    /**
     * What a list needs, entry by entry in the order of the list; entries that need nothing are left out. A strength
     * that is not offered is taken as written. Counts are at most 1,000,000 each.
     *
     * @param contingents the rules of each contingent that has books of its own; the others go by the ruling
     */
    public static List<Requirement> of(Ruling ruling, ForceList list, Map<Id, Ruling> contingents) {
        List<Requirement> all = new ArrayList<>();
        gather(Muster.of(ruling, list.id(), list.body()), all);
        for (Contingent contingent : list.contingents()) {
            Ruling own = contingents.getOrDefault(contingent.id(), ruling);
            gather(Muster.of(own, contingent.id(), contingent.body()), all);
        }
        return List.copyOf(all);
    }

    private static void gather(Muster muster, List<Requirement> into) {
        for (Node node : muster.nodes()) {
            if (node.unit() != null && node.copies() > 0) {
                Wants.of(node).forEach((anyOf, count) -> {
                    if (count > 0) {
                        into.add(new Requirement(node.entry().id(), Optional.of(node.entry().what()),
                                (int) Math.min(Muster.MOST, count * node.copies()), anyOf));
                    }
                });
            }
        }
    }
}
