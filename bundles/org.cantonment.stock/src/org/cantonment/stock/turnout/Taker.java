package org.cantonment.stock.turnout;

import java.nio.IntBuffer;
import java.util.List;

/**
 * What may fill a need, by the numbers of the types in the store.
 *
 * @param number the same for all needs that the very same pieces may fill
 * @param types the types that may stand there without a share to keep to, in order
 * @param tiers how true each is, as the place of the truth among the truths
 * @param lines the line that lets each stand; -1 where none is needed
 * @param shares lines with a share
 */
record Taker(int number, int[] types, int[] tiers, int[] lines, List<Share> shares) {

    /** By this line any of these types may stand there, within its share. */
    record Share(int line, List<Integer> types) {
    }

    Taker numbered(int other) {
        return new Taker(other, types, tiers, lines, shares);
    }

    /** Equal for needs that the very same pieces may fill. */
    List<Object> alike() {
        return List.of(IntBuffer.wrap(types), IntBuffer.wrap(tiers), IntBuffer.wrap(lines), shares);
    }
}
