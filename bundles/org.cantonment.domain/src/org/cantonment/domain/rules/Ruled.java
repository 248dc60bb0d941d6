package org.cantonment.domain.rules;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.Titled;

/** What a layer may change, forbid, allow or lift, and what a dispensation may name. */
public sealed interface Ruled extends Titled permits
        Unit, Formation, Support, Limit, Likeness {

    /** Its lines, in the order of the text. */
    List<Fact> facts();

    /** Its lines of one form, in the order of the text. */
    default <T extends Fact> List<T> facts(Class<T> form) {
        List<T> found = new ArrayList<>();
        for (Fact fact : facts()) {
            if (form.isInstance(fact)) {
                found.add(form.cast(fact));
            }
        }
        return found;
    }
}
