package org.cantonment.domain.force;

import java.util.List;

/** What stands in a list, a contingent or a formation: its entries, and those under the word support. */
public record Body(List<Entry> entries, List<Entry> supports) {

    /** Nothing. */
    public static final Body EMPTY = new Body(List.of(), List.of());

    public Body {
        entries = List.copyOf(entries);
        supports = List.copyOf(supports);
    }
}
