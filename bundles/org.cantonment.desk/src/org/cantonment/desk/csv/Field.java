package org.cantonment.desk.csv;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a column of a shelf's table may hold. The name of a field is its word in small letters. */
public enum Field {
    /** The piece, part, box, extra or bits: by name, by what people call it, or by a box's code. */
    THING,
    /** How many; 1 if empty. "~3" and "3?" are a guess, "?" is not known. */
    COUNT,
    /** known, guessed or unknown; known if empty. */
    CERTAINTY,
    /** As in a shelf: painted, or 2 painted, 1 primed. */
    STATE,
    /** How many of it are painted, or yes or no, where no column says the state. */
    PAINTED,
    /** between games, or at the bench, for what is not glued. */
    LOOSE,
    /** What was paid for one, with or without a currency. */
    PAID,
    /** The day it came, as 2031-04-15. */
    ON,
    /** Where it came from: a name of the books, or any text. */
    FROM,
    /** The printing of a box. */
    PRINTING,
    /** What was built of it, as in a shelf; several lines parted by semicolons. */
    BUILT,
    /** What was lost of it. */
    LOST,
    /** What is left of it. */
    LEFT,
    /** Remarks to be shown; several parted by semicolons. Alone in a row of a table with wishes: one of the whole shelf. */
    NOTE,
    /** Something that no range knows, in words; then the thing stays empty. */
    ODDMENT,
    /** What an oddment is worth. */
    WORTH,
    /** A wish: its name and title, then its lines, parted by semicolons; then thing and oddment stay empty. */
    WISH,
    /** Nothing that matters: the column is passed over. */
    NOTHING;

    /** Its word: "count". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The field of a word. */
    public static Optional<Field> of(String word) {
        return Arrays.stream(values()).filter(field -> field.word().equals(word.strip().toLowerCase(Locale.ROOT))).findFirst();
    }

    /** All words. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Field::word).toList();
    }
}
