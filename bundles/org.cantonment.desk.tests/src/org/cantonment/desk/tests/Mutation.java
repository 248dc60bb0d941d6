package org.cantonment.desk.tests;

import java.util.BitSet;

/**
 * A book with one thing spoilt.
 *
 * @param file    which book, by its path in the folder
 * @param text    what it holds now
 * @param touched the lines of the new text that are not as they were, or follow a line that is gone, from 1
 * @param what    what was done, for the message of a failing test
 */
record Mutation(String file, String text, BitSet touched, String what) {
}
