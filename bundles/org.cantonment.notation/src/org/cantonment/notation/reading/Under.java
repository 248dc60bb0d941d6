package org.cantonment.notation.reading;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.model.book.Line;
import org.cantonment.model.book.Named;

/** Goes through the lines under a heading: gives each its id, and says which of them mean nothing there. */
final class Under {

    /** What became of a line. */
    enum Taken {
        /** It means nothing here. */
        NO,
        /** It was read, and no line may stand under it. */
        ALONE,
        /** It was read with the lines under it. */
        WITH_LINES
    }

    /** Reads one line under a heading. */
    @FunctionalInterface
    interface Taker {
        Taken take(Line line, Id id);
    }

    private Under() {
    }

    /**
     * @param words what people call the heading, as in "box O-12"
     */
    static void each(Reading reading, Id card, List<Line> lines, String words, Taker taker) {
        int number = 0;
        for (Line line : lines) {
            number++;
            Id id = reading.at(card.line(number), line);
            Taken taken = taker.take(line, id);
            if (taken == Taken.NO) {
                reading.misplaced(line, words);
            } else if (taken == Taken.ALONE) {
                none(reading, id, line.getLines());
            }
        }
    }

    /** Only notes may stand here. */
    static void onlyNotes(Reading reading, Id card, List<Line> lines, String words) {
        each(reading, card, lines, words, (line, id) -> Taken.NO);
    }

    private static void none(Reading reading, Id id, List<Line> lines) {
        if (!lines.isEmpty()) {
            onlyNotes(reading, id, lines, "a line that has said all");
        }
    }

    /** @return "box O-12", or "box" if it has no name yet */
    static String words(String kind, Named named) {
        return named.getName() == null ? kind : kind + ' ' + named.getName();
    }

    /** @return {@link Taken#ALONE} after the action */
    static Taken alone(Runnable action) {
        action.run();
        return Taken.ALONE;
    }
}
