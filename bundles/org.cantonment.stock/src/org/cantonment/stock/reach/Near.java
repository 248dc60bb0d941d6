package org.cantonment.stock.reach;

import java.util.List;

import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.turnout.Turnout;

/**
 * The filling of a formation that a shelf is nearest to.
 *
 * @param units the units in it, in the order of the billets
 * @param turnout who stands where then, and what is short
 * @param proven whether no filling is nearer
 */
public record Near(List<Fielded> units, Turnout turnout, boolean proven) {

    public Near {
        units = List.copyOf(units);
    }

    /** How many pieces it is away; 0 if it can be fielded now. */
    public int lacking() {
        return turnout.lacking();
    }
}
