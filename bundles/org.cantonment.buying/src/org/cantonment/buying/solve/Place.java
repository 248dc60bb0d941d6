package org.cantonment.buying.solve;

/**
 * An open place of the search: the bounds that were moved on the way to it, as a chain from the last to the first.
 *
 * @param bound nothing below it costs less
 * @param number in the order of making, for a fixed order among equals
 */
record Place(Place parent, int[] columns, long[] lower, long[] upper, long bound, int depth, long number, int branched,
        boolean up, double share, double estimate) implements Comparable<Place> {

    /** By bound, then the deeper, then the younger first. */
    @Override
    public int compareTo(Place other) {
        if (bound != other.bound) {
            return Long.compare(bound, other.bound);
        }
        return depth != other.depth ? Integer.compare(other.depth, depth) : Long.compare(other.number, number);
    }
}
