package org.cantonment.rules.place;

/**
 * Where everybody stands.
 *
 * @param bays for each slot the bay it is used through
 * @param filled for each slot how many stand in it
 * @param placed for each supply how many of it stand somewhere
 * @param where for each supply and slot how many of it stand there
 * @param proven whether no better placement exists; false if the search had to be stopped
 */
public record Placement(int[] bays, int[] filled, int[] placed, int[][] where, boolean proven) {
}
