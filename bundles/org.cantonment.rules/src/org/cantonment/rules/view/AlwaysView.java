package org.cantonment.rules.view;

import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Always;

/**
 * A line that says what must be so, looked up.
 *
 * @param relaxed the stricter line that a layer loosened to this one
 */
public record AlwaysView(Always always, String book, Formula formula, Optional<AlwaysView> relaxed) implements LimitLine {

    @Override
    public Id id() {
        return always.id();
    }
}
