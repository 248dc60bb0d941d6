package org.cantonment.stock.supply;

import org.cantonment.domain.common.Id;

/**
 * So many of one piece type or kind of bits, ready to hand.
 *
 * @param known counted
 * @param guessed counted on, and said wherever an answer rests on them
 * @param unknown there may be up to so many more; nothing counts on them
 */
public record Stack(Id what, int known, int guessed, int unknown) {

    /** What is counted on. */
    public int counted() {
        return known + guessed;
    }

    Stack plus(Stack other) {
        return new Stack(what, Counts.sum(known, other.known), Counts.sum(guessed, other.guessed),
                Counts.sum(unknown, other.unknown));
    }
}
