package org.cantonment.rules.place;

/**
 * So many alike that want a place.
 *
 * @param choice the number of what they are
 * @param count how many, at least 0
 * @param pin the number of the one slot they may stand in; -1 for any
 */
public record Supply(int choice, int count, int pin) {
}
