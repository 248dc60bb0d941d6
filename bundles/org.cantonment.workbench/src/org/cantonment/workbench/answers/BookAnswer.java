package org.cantonment.workbench.answers;

import java.util.List;
import java.util.Optional;

/**
 * What a job found out about a book.
 *
 * @param heading what it is, in words
 * @param reply the answer for a chat; empty if there is none
 * @param nodes the rows
 * @param aside the same from another side; empty if there is none, or none yet
 */
public record BookAnswer(String heading, String reply, List<AnswerNode> nodes, Optional<Aside> aside) {

    /**
     * The answer from another side.
     *
     * @param heading what it is, in words
     * @param reply the answer for a chat; empty if there is none
     * @param columns what its columns are called
     * @param nodes the rows
     */
    public record Aside(String heading, String reply, List<String> columns, List<AnswerNode> nodes) {

        /** Copies columns and rows. */
        public Aside {
            columns = List.copyOf(columns);
            nodes = List.copyOf(nodes);
        }
    }

    /** Copies the rows. */
    public BookAnswer {
        nodes = List.copyOf(nodes);
    }

    /**
     * From one side only.
     *
     * @param heading what it is, in words
     * @param reply the answer for a chat; empty if there is none
     * @param nodes the rows
     */
    public BookAnswer(String heading, String reply, List<AnswerNode> nodes) {
        this(heading, reply, nodes, Optional.empty());
    }

    /**
     * No rows.
     *
     * @param why why there are none
     * @return the answer
     */
    public static BookAnswer nothing(String why) {
        return new BookAnswer(why, "", List.of());
    }
}
