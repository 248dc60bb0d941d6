package org.cantonment.rules.view;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Provided;

/** A line that says when a limit holds, looked up. */
public record ProvidedView(Provided provided, String book, Formula formula) {

    /** The place of the line. */
    public Id id() {
        return provided.id();
    }
}
