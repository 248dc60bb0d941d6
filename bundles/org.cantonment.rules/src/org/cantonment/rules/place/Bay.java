package org.cantonment.rules.place;

import org.cantonment.rules.view.Selector;

/** One way to use a slot: from min to max places for those the selector takes. */
public record Bay(int min, int max, Selector of) {
}
