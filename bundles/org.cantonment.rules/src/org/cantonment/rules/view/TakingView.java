package org.cantonment.rules.view;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Taking;

/**
 * A line that asks for something of who takes something, looked up.
 *
 * @param beside the objects that are no subjects
 */
public record TakingView(Taking taking, String book, Selector subjects, Selector objects,
        Selector beside) implements LimitLine {

    @Override
    public Id id() {
        return taking.id();
    }
}
