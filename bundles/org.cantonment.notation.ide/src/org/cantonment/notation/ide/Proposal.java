package org.cantonment.notation.ide;

/**
 * Something that may stand where somebody types.
 *
 * @param text        what is put in
 * @param description what it stands for; empty for a word of ours
 * @param name        whether it is a name, not a word of ours
 * @param offset      where the stretch begins that it replaces
 * @param length      how long that stretch is
 */
public record Proposal(String text, String description, boolean name, int offset, int length) {
}
