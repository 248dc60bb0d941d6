package org.cantonment.notation.ide;

import org.antlr.runtime.CharStream;
import org.antlr.runtime.TokenSource;
import org.cantonment.notation.ide.contentassist.antlr.BookParser;
import org.cantonment.notation.ide.contentassist.antlr.internal.InternalBookLexer;
import org.cantonment.notation.parse.BookTokenSource;
import org.cantonment.notation.parse.LineTokens;

/** The parser that tells what may come next, fed with lines; the last one is left open, for it is being typed. */
public class LineCompletionParser extends BookParser {

    private static final LineTokens KINDS = new LineTokens(InternalBookLexer.RULE_LINE, InternalBookLexer.RULE_EOL,
            new int[] { InternalBookLexer.RULE_DOT1, InternalBookLexer.RULE_DOT2, InternalBookLexer.RULE_DOT3,
                InternalBookLexer.RULE_DOT4 },
            InternalBookLexer.RULE_WS, InternalBookLexer.RULE_COMMENT, InternalBookLexer.RULE_OTHER);

    @Override
    protected TokenSource createLexer(CharStream stream) {
        return new BookTokenSource(super.createLexer(stream), KINDS, true);
    }
}
