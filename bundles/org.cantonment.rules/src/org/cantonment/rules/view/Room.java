package org.cantonment.rules.view;

import org.cantonment.domain.common.Span;

/** A number of places and who may have them. */
public record Room(Span span, Selector of) {

    /** "2 to 3 of Tread troop or Crank troop". */
    public String words() {
        return span + " of " + of.words();
    }
}
