package org.cantonment.notation.ide;

/** Which signs make a name. */
final class NameSigns {

    private NameSigns() {
    }

    /** Whether a name may have the sign; the slash parts a book's name from a name in it. */
    static boolean isPart(char c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '\'' || c == '/';
    }
}
