package org.cantonment.notation.parse;

import java.util.Optional;

import org.antlr.runtime.MismatchedTokenException;
import org.antlr.runtime.RecognitionException;
import org.antlr.runtime.Token;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.form.Near;
import org.cantonment.notation.parser.antlr.internal.InternalBookLexer;
import org.eclipse.xtext.nodemodel.SyntaxErrorMessage;
import org.eclipse.xtext.parser.antlr.SyntaxErrorMessageProvider;

import com.google.inject.Inject;

/** Says in plain words what is wrong with a line; the word that would mend it, if there is one, is the data. */
public class FormMessages extends SyntaxErrorMessageProvider {

    @Inject
    private LineWords lineWords;

    @Override
    public SyntaxErrorMessage getSyntaxErrorMessage(IValueConverterErrorContext context) {
        if (context.getValueConverterException() instanceof BadValue bad) {
            return new SyntaxErrorMessage(bad.getMessage(), bad.code());
        }
        return new SyntaxErrorMessage(context.getValueConverterException().getMessage(), Codes.WORD);
    }

    @Override
    public SyntaxErrorMessage getSyntaxErrorMessage(IParserErrorContext context) {
        RecognitionException error = context.getRecognitionException();
        if (error == null || error.token == null) {
            return new SyntaxErrorMessage("This line cannot be read.", Codes.WORD);
        }
        Line line = Line.around(error);
        if (line.first() == null && !line.book().isEmpty()) {
            return new SyntaxErrorMessage("This line says nothing behind its dots.", Codes.SHORT);
        }
        if (line.first() == null) {
            return new SyntaxErrorMessage("This file is empty. Its first line says what it holds: "
                    + String.join(", ", lineWords.ofBooks()) + ".", Codes.EMPTY);
        }
        String expected = error instanceof MismatchedTokenException mismatch
                ? expected(mismatch.expecting, context.getTokenNames()) : null;
        return message(error.token, line, expected);
    }

    private SyntaxErrorMessage message(Token token, Line line, String expected) {
        if (token.getType() == InternalBookLexer.RULE_EOL || token.getType() == Token.EOF) {
            return isStart(token, line) ? noSuchLine(line) : tooShort(line, expected);
        }
        String text = shown(token);
        // The end of the file has no text.
        String typed = token.getText() == null ? "" : token.getText();
        if (typed.length() > BookTokenSource.LONGEST
                || typed.indexOf(' ') > 0 && token.getType() == InternalBookLexer.RULE_OTHER) {
            return new SyntaxErrorMessage("This line is longer than " + BookTokenSource.LONGEST
                    + " characters; the rest of it is not read.", Codes.LONG);
        }
        if (isStart(token, line)) {
            return noSuchLine(line);
        }
        if (token.getType() == InternalBookLexer.RULE_OTHER) {
            return new SyntaxErrorMessage("'" + text + "' means nothing here.", Codes.SIGN);
        }
        if (token.getText().equals(",") && line.before().getType() == InternalBookLexer.RULE_INT) {
            return new SyntaxErrorMessage("A comma cannot follow '" + line.before().getText()
                    + "' here; decimals are written with a point.", Codes.WORD);
        }
        return wrongWord(token, line, expected);
    }

    /** The word itself, or a second word behind a name that was surely meant as one of our words. */
    private boolean isStart(Token token, Line line) {
        return token == line.first() || line.before() == null || line.before() == line.first()
                && line.first().getType() == InternalBookLexer.RULE_SMALL
                && Near.of(line.first().getText(), lineWords.of(line.book(), line.dots())).isPresent();
    }

    private SyntaxErrorMessage noSuchLine(Line line) {
        String word = shown(line.first());
        if (line.underHead()) {
            return new SyntaxErrorMessage("Only a note stands under the first line; take the dot from '" + word
                    + "', or name above it what it belongs to.", Codes.LINE);
        }
        boolean head = line.number() == 1;
        Optional<String> near = Near.of(word, head ? lineWords.ofBooks() : lineWords.of(line.book(), line.dots()));
        String what = head ? "No book begins with '" : "No line begins with '";
        if (near.isPresent()) {
            return new SyntaxErrorMessage(what + word + "' here; did you mean '" + near.get() + "'?", Codes.LINE,
                    new String[] { word, near.get() });
        }
        String hint = head ? " The first line says what a file holds: " + String.join(", ", lineWords.ofBooks()) + "."
                : "";
        return new SyntaxErrorMessage(what + word + "' here." + hint, Codes.LINE);
    }

    private static SyntaxErrorMessage tooShort(Line line, String expected) {
        String after = line.before() == null ? "" : " after '" + shown(line.before()) + "'";
        String more = expected == null || expected.startsWith("the end") ? "more" : expected;
        return new SyntaxErrorMessage("This line ends too soon: " + more + " is missing" + after + ".", Codes.SHORT);
    }

    private static SyntaxErrorMessage wrongWord(Token token, Line line, String expected) {
        String text = shown(token);
        String before = shown(line.before());
        if (expected == null) {
            return new SyntaxErrorMessage("'" + text + "' cannot follow '" + before + "'.", Codes.WORD);
        }
        if (expected.startsWith("the end")) {
            boolean twoNames = token.getType() == InternalBookLexer.RULE_CAPITAL
                    && line.before().getType() == InternalBookLexer.RULE_CAPITAL;
            return new SyntaxErrorMessage(twoNames
                    ? "Two names beside each other; a name is one word, its parts joined by hyphens: '" + before + "-"
                            + text + "'."
                    : "'" + text + "' is too much; the line should end after '" + before + "'.", Codes.WORD,
                    twoNames ? new String[] { before + " " + text, before + "-" + text } : new String[0]);
        }
        boolean ours = expected.equals("a name") && Character.isLowerCase(text.charAt(0));
        return new SyntaxErrorMessage("After '" + before + "' comes " + expected + ", not '" + text + "'."
                + (ours ? " Names begin with a capital." : ""), Codes.WORD, mend(text, expected));
    }

    /** A word that looks like the expected one is replaced; before any other it was left out. */
    private static String[] mend(String text, String expected) {
        if (!expected.startsWith("'")) {
            return new String[0];
        }
        String word = expected.substring(1, expected.length() - 1);
        boolean alike = Near.of(text, java.util.List.of(word)).isPresent();
        return new String[] { text, alike ? word : word + " " + text };
    }

    private static String expected(int type, String[] names) {
        return switch (type) {
            case InternalBookLexer.RULE_INT -> "a number";
            case InternalBookLexer.RULE_DECIMAL -> "an amount such as 24.50";
            case InternalBookLexer.RULE_STRING -> "a text in quotes";
            case InternalBookLexer.RULE_DATE -> "a date such as 2031-04-15";
            case InternalBookLexer.RULE_CAPITAL, InternalBookLexer.RULE_SMALL -> "a name";
            case InternalBookLexer.RULE_EOL, Token.EOF, InternalBookLexer.RULE_LINE -> "the end of the line";
            default -> type >= 0 && type < names.length ? names[type] : null;
        };
    }

    private static String shown(Token token) {
        String text = token == null ? "" : token.getText();
        if (text == null || text.isEmpty() || token.getType() == Token.EOF) {
            return "the line's start";
        }
        if (text.length() == 1 && !Character.isLetterOrDigit(text.charAt(0)) && text.charAt(0) > 126) {
            return String.format("U+%04X", (int) text.charAt(0));
        }
        return text.length() <= 40 ? text : text.substring(0, 39) + "…";
    }
}
