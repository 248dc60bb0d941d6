package org.cantonment.desk.cli;

import java.util.OptionalInt;

/** Numbers behind options. */
final class Numbers {
    private static final int MOST = 1_000_000;

    private Numbers() {
    }

    /** @throws WrongCall if a value is given that is no whole number from the least to a million */
    static OptionalInt from(Call call, String option, int least) {
        if (call.value(option).isEmpty()) {
            return OptionalInt.empty();
        }
        String text = call.value(option).get();
        if (text.length() <= 7 && !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9')
                && Integer.parseInt(text) >= least && Integer.parseInt(text) <= MOST) {
            return OptionalInt.of(Integer.parseInt(text));
        }
        throw new WrongCall("'" + Plain.line(text) + "' behind '" + option + "' is no whole number from " + least + " to "
                + MOST + ".");
    }
}
