package org.cantonment.rules.change;

import org.cantonment.domain.common.Id;
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

    private static boolean takes(Part part, SupportView support, Id id) {
        Choice choice = part.now().choice(id);
        return choice != null && support.per().takes(choice.index());
    }
}
