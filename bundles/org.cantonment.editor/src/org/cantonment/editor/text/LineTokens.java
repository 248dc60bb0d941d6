package org.cantonment.editor.text;

import java.util.Arrays;

import org.antlr.runtime.ANTLRStringStream;
import org.antlr.runtime.CommonToken;
import org.antlr.runtime.Token;
import org.cantonment.editor.api.LanguageHost;
import org.cantonment.editor.api.TextKind;
import org.cantonment.editor.model.XtextTools;
import org.eclipse.xtext.parser.antlr.Lexer;

/**
 * What the language's own lexer sees in a few whole lines. Tokens are expected to end on the line they
 * begin on.
 */
final class LineTokens {

    private LineTokens() {
    }

    /** The kind of every character of the text. */
    static TextKind[] kinds(String text, XtextTools tools, LanguageHost host) {
        TextKind[] kinds = new TextKind[text.length()];
        Arrays.fill(kinds, TextKind.PLAIN);
        Lexer lexer = tools.lexers().get();
        lexer.setCharStream(new ANTLRStringStream(text));
        for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken()) {
            String name = tools.tokenNames().get(token.getType());
            if (name != null && token instanceof CommonToken placed) {
                Arrays.fill(kinds, placed.getStartIndex(), placed.getStopIndex() + 1, host.kindOfToken(name));
            }
        }
        return kinds;
    }
}
