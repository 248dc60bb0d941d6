package org.cantonment.rules.view;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Before;

/** A line that asks for one thing before another, looked up. */
public record BeforeView(Before before, String book, Selector first, Selector then) implements LimitLine {

    @Override
    public Id id() {
        return before.id();
    }
}
