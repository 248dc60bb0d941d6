package org.cantonment.notation.parse;

import org.antlr.runtime.CharStream;
import org.antlr.runtime.TokenSource;
import org.cantonment.notation.parser.antlr.BookParser;
import org.cantonment.notation.parser.antlr.internal.InternalBookParser;
import org.eclipse.xtext.parser.antlr.XtextTokenStream;

/** The generated parser, fed with lines. */
public class LineParser extends BookParser {

    @Override
    protected InternalBookParser createParser(XtextTokenStream stream) {
        return new LineRecovery(stream, getGrammarAccess());
    }

    @Override
    protected TokenSource createLexer(CharStream stream) {
        return new BookTokenSource(super.createLexer(stream), LineTokens.OF_PARSER, false);
    }

    /** A piece of text alone does not tell how deep it stands, so a change is read with its whole book. */
    @Override
    protected boolean isReparseSupported() {
        return false;
    }
}
