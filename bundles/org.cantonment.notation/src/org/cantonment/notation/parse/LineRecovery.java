package org.cantonment.notation.parse;

import org.antlr.runtime.IntStream;
import org.antlr.runtime.RecognitionException;
import org.antlr.runtime.TokenStream;
import org.cantonment.notation.parser.antlr.internal.InternalBookParser;
import org.cantonment.notation.services.BookGrammarAccess;

/**
 * Keeps a line that cannot be read from costing its neighbour. A parser that stumbles twice at the same token would pass
 * over that token; at a line's end or beginning this would swallow the next line's first word. Here the rules that are
 * still open may each stumble there once, until the one for the whole line is reached.
 */
final class LineRecovery extends InternalBookParser {

    /** As many rules as can be open within one line; more stumbles mean that nobody is waiting for the token. */
    private static final int DEEPEST = 12;

    private int stumbles;

    LineRecovery(TokenStream stream, BookGrammarAccess grammar) {
        super(stream, grammar);
    }

    @Override
    public void recover(IntStream input, RecognitionException error) {
        if (state.lastErrorIndex == input.index() && limitsLine(input.LA(1)) && ++stumbles < DEEPEST) {
            state.lastErrorIndex = -1; // the inherited way would pass over the token
        } else if (state.lastErrorIndex != input.index()) {
            stumbles = 0;
        }
        super.recover(input, error);
    }

    private static boolean limitsLine(int token) {
        return token == RULE_EOL || token == RULE_LINE || token == RULE_DOT1 || token == RULE_DOT2
                || token == RULE_DOT3 || token == RULE_DOT4;
    }
}
