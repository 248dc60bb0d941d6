package org.cantonment.rules.change;

import org.cantonment.domain.common.Id;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Ruling;

/**
 * A list without its contingents, or one contingent of it.
 *
 * @param now the rules that it is to be legal under
 * @param written the rules that it was written under
 * @param muster what is written, laid out under the rules of now
 * @param then the same under the rules of when it was written
 * @param first the number of its first entry in the whole list
 */
record Part(Id id, Ruling now, Ruling written, Muster muster, Muster then, int first) {

    /** What a choice of any part is in this one; null if it is nothing here. */
    Choice own(Choice choice) {
        int index = choice.index();
        return index < now.choices().size() && now.choices().get(index) == choice ? choice : now.choice(choice.id());
    }

    /** Whether some price hangs on the rest of the list by a formula: then no edit tells by itself what it saves. */
    boolean fluid() {
        return !now.surcharged().isEmpty();
    }
}
