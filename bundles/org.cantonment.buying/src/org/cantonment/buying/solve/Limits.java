package org.cantonment.buying.solve;

/**
 * Where a search gives up. Limits are counted in work, not in time, so that the same question gets the same answer on any
 * machine; for a limit of time, cancel.
 *
 * @param pivots at most so many exchanges in the simplex and places looked at, together
 * @param places at most so many open places of the search at once: it holds no more in memory
 */
public record Limits(long pivots, int places) {

    /** Practically without end; memory stays bounded. */
    public static final Limits WIDE = new Limits(Long.MAX_VALUE, 200_000);
}
