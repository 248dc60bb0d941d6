package org.cantonment.rules.guest;

/**
 * What a call of foreign code brought.
 *
 * @param value the answer; null if there is none
 * @param fault what the foreign code did, as the end of a sentence that begins with its name; null if nothing
 */
record Outcome<T>(T value, String fault) {
}
