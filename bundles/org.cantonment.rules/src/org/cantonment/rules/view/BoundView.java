package org.cantonment.rules.view;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Bound;

/** A bound, looked up; with the stricter one that a layer relaxed by it, if there is one. */
public record BoundView(Bound bound, String book, Selector of, Selector per, Optional<BoundView> relaxed)
        implements LimitLine {

    @Override
    public Id id() {
        return bound.id();
    }
}
