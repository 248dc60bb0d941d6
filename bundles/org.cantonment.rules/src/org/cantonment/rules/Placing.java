package org.cantonment.rules;

import org.cantonment.domain.common.Id;

/**
 * Where some of an entry stand.
 *
 * @param entry the entry
 * @param count how many of it
 * @param place the line of the billet or the support
 * @param title what people call the billet or support
 */
public record Placing(Id entry, int count, Id place, String title) {
}
