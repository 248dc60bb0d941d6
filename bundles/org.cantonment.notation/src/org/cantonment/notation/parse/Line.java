package org.cantonment.notation.parse;

import org.antlr.runtime.RecognitionException;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenStream;
import org.cantonment.notation.parser.antlr.internal.InternalBookLexer;

/**
 * The line in which the parser stumbled.
 *
 * @param book   the first word of the file, empty if there is none
 * @param number 1 for the first line that says something, 2 for any other
 * @param dots   how deep the line stands, 0 to 4
 * @param first  its first word; null if the file holds nothing
 * @param before the word before the one that was stumbled over; null at the line's start
 * @param underHead whether it has dots and belongs to the file's first line
 */
record Line(String book, int number, int dots, Token first, Token before, boolean underHead) {

    static Line around(RecognitionException error) {
        TokenStream tokens = (TokenStream) error.input;
        if (tokens.size() == 0) {
            return new Line("", 1, 0, null, null, false);
        }
        int at = Math.min(error.index, tokens.size() - 1);
        Token before = null;
        Token first = null;
        int start = at;
        for (int i = at; i >= 0; i--) {
            Token token = tokens.get(i);
            int type = token.getType();
            if (isStart(type) && i < at) {
                start = i;
                break;
            }
            if (isStart(type)) {
                start = i;
                first = next(tokens, i);
                break;
            }
            if (isWord(type)) {
                first = token;
                if (before == null && i < at) {
                    before = token;
                }
            }
        }
        Token word = first(tokens);
        int dots = Math.max(0, tokens.get(start).getType() - InternalBookLexer.RULE_LINE);
        return new Line(word == null ? "" : word.getText(), first == word ? 1 : 2, dots > 4 ? 0 : dots, first, before,
                dots > 0 && starts(tokens, start) == 1);
    }

    private static Token first(TokenStream tokens) {
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            if (isWord(token.getType()) && !isStart(token.getType())) {
                return token;
            }
        }
        return null;
    }

    /** How many lines without dots begin before a place. */
    private static int starts(TokenStream tokens, int end) {
        int count = 0;
        for (int i = 0; i < end && count < 2; i++) {
            if (tokens.get(i).getType() == InternalBookLexer.RULE_LINE) {
                count++;
            }
        }
        return count;
    }

    /** The first word behind a line's start, if the line has one. */
    private static Token next(TokenStream tokens, int start) {
        for (int i = start + 1; i < tokens.size(); i++) {
            int type = tokens.get(i).getType();
            if (isStart(type) || type == InternalBookLexer.RULE_EOL) {
                return null;
            }
            if (isWord(type)) {
                return tokens.get(i);
            }
        }
        return null;
    }

    private static boolean isStart(int type) {
        return type >= InternalBookLexer.RULE_LINE && type <= InternalBookLexer.RULE_DOT4;
    }

    private static boolean isWord(int type) {
        return type != InternalBookLexer.RULE_WS && type != InternalBookLexer.RULE_COMMENT
                && type != InternalBookLexer.RULE_EOL && type != Token.EOF;
    }
}
