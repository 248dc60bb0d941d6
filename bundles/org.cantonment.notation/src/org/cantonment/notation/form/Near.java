package org.cantonment.notation.form;

import java.util.Collection;
import java.util.Optional;

import org.cantonment.domain.common.Nearest;

/** The nearest known word to a mistyped one, under its name on this floor. */
public final class Near {

    private Near() {
    }

    /** {@link Nearest#of}. */
    public static Optional<String> of(String typed, Collection<String> known) {
        return Nearest.of(typed, known);
    }
}
