package org.cantonment.stock.eras;

import org.cantonment.domain.common.Id;

/**
 * What carries over from one era to another.
 *
 * <p><em>By pieces:</em> of the pieces and unbuilt parts that some unit of the one era can use, so many can be used by
 * some unit of the other. <em>By points:</em> of the points of the greatest army in the one era, so many are in units
 * all of whose models some unit of the other can use.
 *
 * @param ofPieces pieces of use in the era it carries over from
 * @param pieces how many of them are of use in the other, too
 * @param ofPoints points of the greatest army in the era it carries over from
 * @param points how many of them carry over
 */
public record Carry(Id from, Id to, int ofPieces, int pieces, int ofPoints, int points) {
}
