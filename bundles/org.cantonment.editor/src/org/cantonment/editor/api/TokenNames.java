package org.cantonment.editor.api;

import java.util.Locale;

/** Guesses what a lexer token is from the name that the grammar gave it. */
public final class TokenNames {

    private TokenNames() {
    }

    /**
     * The kind that a name suggests.
     *
     * @param tokenName {@code RULE_…} for a terminal rule, or a keyword in single quotes
     * @return the kind; {@link TextKind#PLAIN} if the name suggests none
     */
    public static TextKind kindOf(String tokenName) {
        if (tokenName.startsWith("'")) {
            return tokenName.length() > 1 && Character.isLetter(tokenName.charAt(1)) ? TextKind.KEYWORD : TextKind.SIGN;
        }
        String name = tokenName.toUpperCase(Locale.ROOT);
        if (has(name, "COMMENT", "REMARK")) {
            return TextKind.REMARK;
        }
        if (has(name, "STRING", "QUOTED")) {
            return TextKind.QUOTED;
        }
        if (has(name, "INT", "NUMBER", "DECIMAL", "DATE", "TIME", "AMOUNT", "SCORE", "COUNT")) {
            return TextKind.NUMBER;
        }
        return has(name, "ID", "NAME") ? TextKind.NAME : TextKind.PLAIN;
    }

    private static boolean has(String name, String... parts) {
        for (String part : parts) {
            if (name.contains(part)) {
                return true;
            }
        }
        return false;
    }
}
