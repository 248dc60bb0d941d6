package org.cantonment.buying.growth;

import org.cantonment.rules.view.Choice;

/**
 * Something that can be put into a list: a unit at a strength, or a formation with nothing in it yet.
 *
 * @param taking null for a formation
 * @param slots what it needs, by the numbers of the larder, and how many of each
 * @param traits what a wish says of it, as bits
 */
record Item(Choice choice, Taking taking, long points, int[] slots, int[] counts, long traits) {
}
