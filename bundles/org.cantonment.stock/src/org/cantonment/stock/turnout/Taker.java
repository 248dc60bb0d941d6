package org.cantonment.stock.turnout;

import java.util.List;

/**
 * What may fill a need, by the numbers of the types in the store.
 *
 * @param number the same for all needs that the very same pieces may fill
 * @param types the types that may stand there without a share to keep to
 * @param tiers how true each is, as the place of the truth among the truths
 * @param lines the line that lets each stand; -1 where none is needed
 * @param lent whether each would be lent
 * @param shares lines with a share
 */
record Taker(int number, int[] types, int[] tiers, int[] lines, boolean[] lent, List<Share> shares) {

    /** By this line any of these types may stand there, within its share; those that would be lent are marked. */
    record Share(int line, List<Integer> types, List<Boolean> lent) {
    }
}
