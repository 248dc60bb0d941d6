package org.cantonment.notation.reading;

import java.util.Locale;
import java.util.Optional;

/** Our own small words, each of which is a constant of some enumeration. */
final class Words {

    private Words() {
    }

    /** @return the constant that is written so; empty for a word that is none, or no word at all */
    static <E extends Enum<E>> Optional<E> of(Class<E> type, String word) {
        if (word == null) {
            return Optional.empty();
        }
        String name = word.toUpperCase(Locale.ROOT).replace('-', '_');
        for (E constant : type.getEnumConstants()) {
            if (constant.name().equals(name)) {
                return Optional.of(constant);
            }
        }
        return Optional.empty();
    }
}
