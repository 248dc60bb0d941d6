package org.cantonment.workbench.fielding;

import java.util.List;
import java.util.stream.IntStream;

import org.cantonment.workbench.answers.AnswerTree.Column;

/** Columns from titles and widths. */
final class Columns {

    private Columns() {
    }

    /** @param widths in characters, one for each title */
    static List<Column> of(List<String> titles, int... widths) {
        return IntStream.range(0, widths.length).mapToObj(i -> new Column(titles.get(i), widths[i])).toList();
    }
}
