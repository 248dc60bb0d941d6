package org.cantonment.workbench.answers;

import java.util.List;

/**
 * What a job found out about a book.
 *
 * @param heading what it is, in words
 * @param reply the answer for a chat; empty if there is none
 * @param nodes the rows
 */
public record BookAnswer(String heading, String reply, List<AnswerNode> nodes) {

    /** Copies the rows. */
    public BookAnswer {
        nodes = List.copyOf(nodes);
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
