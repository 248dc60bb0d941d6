package org.cantonment.notation.parse;

import org.cantonment.notation.parser.antlr.internal.InternalBookLexer;

/**
 * How one generated lexer numbers the tokens that make lines; the parser's lexer and completion's each have their own
 * numbers.
 *
 * @param dots one to four dots, in this order
 */
public record LineTokens(int line, int eol, int[] dots, int blank, int remark, int other) {

    /** The numbers of the parser's lexer. */
    public static final LineTokens OF_PARSER = new LineTokens(InternalBookLexer.RULE_LINE, InternalBookLexer.RULE_EOL,
            new int[] { InternalBookLexer.RULE_DOT1, InternalBookLexer.RULE_DOT2, InternalBookLexer.RULE_DOT3,
                InternalBookLexer.RULE_DOT4 },
            InternalBookLexer.RULE_WS, InternalBookLexer.RULE_COMMENT, InternalBookLexer.RULE_OTHER);

    boolean isDots(int type) {
        for (int each : dots) {
            if (each == type) {
                return true;
            }
        }
        return false;
    }
}
