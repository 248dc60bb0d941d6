package org.cantonment.editor.api;

import java.util.List;
import java.util.Objects;

/**
 * One line of an outline.
 *
 * @param label what is shown
 * @param detail shown behind the label in a quieter colour; may be empty
 * @param icon the name of an icon that {@link LanguageHost#icon(String)} knows; may be empty
 * @param offset where the thing begins, in characters from the start of the file
 * @param length how many characters it covers
 * @param children what belongs to it, in the order of the text
 */
public record OutlineNode(String label, String detail, String icon, int offset, int length,
        List<OutlineNode> children) {

    /** Copies the children. */
    public OutlineNode {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(detail, "detail");
        Objects.requireNonNull(icon, "icon");
        children = List.copyOf(children);
    }

    /**
     * Whether a place in the text lies in this thing.
     *
     * @param place characters from the start of the file
     * @return true from its first character to just behind its last
     */
    public boolean covers(int place) {
        return offset <= place && place <= offset + length;
    }
}
