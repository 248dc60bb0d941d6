package org.cantonment.rules.view;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Keep;

/** A line that asks to keep the list before. */
public record KeepView(Keep keep, String book) implements LimitLine {

    @Override
    public Id id() {
        return keep.id();
    }
}
