package org.cantonment.workbench.answers;

import java.util.List;
import java.util.Optional;

import org.cantonment.editor.api.Severity;

/**
 * A row of an answer, with what it opens into.
 *
 * @param cells what stands in its columns; those left out are empty
 * @param sign the sign before it, which its words say too
 * @param meaning what it stands for, to whoever acts on it
 * @param children its parts
 */
public record AnswerNode(List<String> cells, Optional<Severity> sign, Optional<Object> meaning,
        List<AnswerNode> children) {

    /** Copies the lists. */
    public AnswerNode {
        cells = List.copyOf(cells);
        children = List.copyOf(children);
    }

    /**
     * A row of words.
     *
     * @param text what stands in its first column
     * @param children its parts
     * @return the row
     */
    public static AnswerNode of(String text, List<AnswerNode> children) {
        return new AnswerNode(List.of(text), Optional.empty(), Optional.empty(), children);
    }

    /**
     * The same with a meaning.
     *
     * @param what what it stands for
     * @return the row
     */
    public AnswerNode meaning(Object what) {
        return new AnswerNode(cells, sign, Optional.of(what), children);
    }

    /**
     * The same with a sign.
     *
     * @param severity which
     * @return the row
     */
    public AnswerNode signed(Severity severity) {
        return new AnswerNode(cells, Optional.of(severity), meaning, children);
    }

    /**
     * What stands in a column.
     *
     * @param column from 0
     * @return the text, possibly empty
     */
    public String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }

    /** The row and all it opens into as lines, each a blank deeper than what it belongs to, columns parted by tabs. */
    public String asText() {
        StringBuilder text = new StringBuilder(String.join("\t", cells).stripTrailing());
        children.forEach(child -> text.append('\n').append(child.asText().indent(2).stripTrailing()));
        return text.toString();
    }
}
