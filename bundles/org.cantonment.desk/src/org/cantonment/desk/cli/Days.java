package org.cantonment.desk.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Days behind options. */
final class Days {
    private Days() {
    }

    /** @throws WrongCall if it is no day */
    static LocalDate read(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new WrongCall("'" + Plain.line(text) + "' is no day; write it like 2031-04-15.");
        }
    }
}
