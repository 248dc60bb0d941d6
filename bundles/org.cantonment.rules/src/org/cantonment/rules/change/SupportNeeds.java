package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.SupportView;

/**
 * What findings about supports ask for: that something is done under the word support or beside the formations, or that
 * there are more or fewer of what a support goes by.
 */
final class SupportNeeds {

    private final Needs needs;

    SupportNeeds(Needs needs) {
        this.needs = needs;
    }

    Need of(Part part) {
        return Need.of(1, needs.open(), edit -> edit.kind() == Edit.Kind.ADD_FORMATION || touches(edit, part)
                || goesBy(edit, part) ? 1 : 0);
    }

    /** Where there is one support with one way to fill it: that no more want a place in it than it has. */
    void kept(Part part, List<Need> into) {
        List<SupportView> supports = part.now().supports();
        boolean nested = part.muster().nodes().stream().anyMatch(node -> node.parent() >= 0 && node.support());
        if (supports.size() != 1 || supports.get(0).rooms().size() != 1 || !supports.get(0).permission().allowed() || nested) {
            return;
        }
        SupportView support = supports.get(0);
        LimitNeeds limits = new LimitNeeds(needs, part);
        Muster muster = needs.muster(part);
        long most = support.rooms().get(0).span().max();
        boolean per = !support.per().empty();
        long group = per ? Math.max(1, support.perCount()) : 1;
        long wanting = 0;
        for (Node node : muster.nodes()) {
            wanting += node.choice() != null && node.parent() < 0 && wants(node.support(), node.unit() != null, part)
                    ? node.count() : 0;
        }
        long room = most * (per ? muster.count(support.per()) : 1);
        into.add(Need.of(group * wanting - room, needs.open(), edit -> per && limits.hosts(edit, support.per()) ? Need.PLENTY
                : (per ? most * limits.count(edit, support.per()) : 0) - group * wanting(edit, part)));
    }

    private static boolean wants(boolean support, boolean unit, Part part) {
        return support || part.now().hasFormations() && unit;
    }

    private static long wanting(Edit edit, Part part) {
        boolean top = edit.group() == null ? edit.place().formation() == null : edit.group().above() == null;
        boolean support = edit.group() == null ? edit.place().support() : edit.group().first().support();
        boolean unit = edit.group() == null ? edit.formation() == null : !edit.group().formation();
        long wanting = 0;
        if (top && wants(support, unit, part) && edit.kind() != Edit.Kind.ALTER && edit.kind() != Edit.Kind.SUCCEED
                && !edit.deltas().isEmpty()) {
            wanting = edit.deltas().get(0).count();
        }
        return wanting;
    }

    /** Whether an edit changes who wants a place in a support. */
    static boolean touches(Edit edit, Part part) {
        if (edit.group() == null) {
            return edit.place().part() == part && edit.place().formation() == null;
        }
        if (edit.group().part() != part) {
            return false;
        }
        return edit.group().formation() || edit.group().above() == null || edit.group().first().support();
    }

    private static boolean goesBy(Edit edit, Part part) {
        for (Delta delta : edit.deltas()) {
            for (SupportView support : part.now().supports()) {
                if (takes(part, support, delta.choice())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean takes(Part part, SupportView support, Choice any) {
        Choice choice = part.own(any);
        return choice != null && support.per().takes(choice.index());
    }
}
