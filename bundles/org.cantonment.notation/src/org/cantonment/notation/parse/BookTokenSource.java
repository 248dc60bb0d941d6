package org.cantonment.notation.parse;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;

import org.antlr.runtime.CommonToken;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenSource;

/**
 * Makes lines of tokens. Every line that holds more than blanks and remarks gets an empty {@code LINE} before it, or
 * keeps its dots, and an empty {@code EOL} behind it; so the parser can always find the next line again, whatever
 * was typed on this one.
 *
 * <p>Dots that jump a level are read as the deepest level that fits; their text stays, so that the jump can be
 * reported. A line of more than {@value #LONGEST} characters becomes one stray token behind its first word.
 */
public final class BookTokenSource implements TokenSource {

    /** Longest line that is looked at; a longer one is one finding instead of a hundred thousand. */
    public static final int LONGEST = 2_000;

    private static final Map<String, Integer> DEEPEST = Map.of("range", 2, "rules", 4, "shelf", 1, "list", 4,
            "campaign", 3, "week", 3, "names", 1);

    private final TokenSource lexer;
    private final LineTokens kinds;
    private final boolean completing;
    private final Deque<Token> ready = new ArrayDeque<>();
    private CommonToken ahead;
    private boolean lineOpen;
    private int lineStart;
    private int lastStop = -1;
    private int lines;
    private int depth;
    private int deepest = 4;

    /**
     * @param lexer      where the plain tokens come from
     * @param kinds      how that lexer numbers its tokens
     * @param completing whether the text ends where somebody is typing: then the last line is left open, and an empty
     *                   last line is begun, so that the parser can say what may come next
     */
    public BookTokenSource(TokenSource lexer, LineTokens kinds, boolean completing) {
        this.lexer = lexer;
        this.kinds = kinds;
        this.completing = completing;
    }

    @Override
    public Token nextToken() {
        while (ready.isEmpty()) {
            read();
        }
        return ready.poll();
    }

    @Override
    public String getSourceName() {
        return lexer.getSourceName();
    }

    private CommonToken take() {
        CommonToken next = ahead;
        ahead = null;
        return next != null ? next : (CommonToken) lexer.nextToken();
    }

    private void read() {
        CommonToken token = take();
        int type = token.getType();
        if (type == Token.EOF) {
            end(token);
        } else if (type == kinds.blank()) {
            blank(token);
        } else if (type == kinds.remark()) {
            ready.add(token);
        } else {
            content(token);
        }
    }

    private void end(CommonToken token) {
        int at = token.getStartIndex();
        if (lineOpen && !completing) {
            close(token);
        } else if (!lineOpen && completing) {
            ready.add(empty(kinds.line(), Math.max(at, lastStop + 1), token));
        }
        lineOpen = false;
        ready.add(token);
    }

    private void blank(CommonToken token) {
        if (lineOpen && breaksLine(token)) {
            close(token);
        }
        ready.add(token);
        lastStop = Math.max(lastStop, token.getStopIndex());
    }

    private static boolean breaksLine(CommonToken token) {
        String text = token.getText();
        return text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0;
    }

    private void close(CommonToken next) {
        ready.add(empty(kinds.eol(), lastStop + 1, next));
        lineOpen = false;
    }

    private void content(CommonToken token) {
        boolean first = !lineOpen;
        lineOpen = true;
        if (first) {
            begin(token);
        } else if (token.getStopIndex() - lineStart > LONGEST) {
            swallow(token);
        } else {
            if (isDots(token) || isOurs(token)) {
                token.setType(kinds.other());
            }
            add(token);
        }
    }

    private void begin(CommonToken token) {
        lineStart = token.getStartIndex();
        if (isDots(token) && lines > 0) {
            joinDots(token);
            int dots = token.getStopIndex() - token.getStartIndex() + 1;
            depth = Math.min(dots, Math.min(depth + 1, lines == 1 ? 1 : deepest));
            token.setType(kinds.dots()[depth - 1]);
        } else {
            lines++;
            depth = 0;
            if (lines == 1) {
                deepest = DEEPEST.getOrDefault(token.getText(), 4);
            }
            if (isDots(token) || isOurs(token)) {
                token.setType(kinds.other());
            }
            ready.add(empty(kinds.line(), token.getStartIndex(), token));
        }
        add(token);
    }

    /** Five dots and more come from the lexer in pieces. */
    private void joinDots(CommonToken token) {
        ahead = (CommonToken) lexer.nextToken();
        while (isDots(ahead) && ahead.getStartIndex() == token.getStopIndex() + 1) {
            token.setStopIndex(ahead.getStopIndex());
            ahead = (CommonToken) lexer.nextToken();
        }
    }

    private void swallow(CommonToken token) {
        CommonToken next = (CommonToken) lexer.nextToken();
        while (next.getType() != Token.EOF && !(next.getType() == kinds.blank() && breaksLine(next))) {
            token.setStopIndex(next.getStopIndex());
            next = (CommonToken) lexer.nextToken();
        }
        ahead = next;
        token.setType(kinds.other());
        add(token);
    }

    private void add(CommonToken token) {
        lastStop = token.getStopIndex();
        ready.add(token);
    }

    private boolean isDots(CommonToken token) {
        return kinds.isDots(token.getType());
    }

    /** Somebody may really type the two characters that stand for our empty tokens in the grammar. */
    private boolean isOurs(CommonToken token) {
        return token.getType() == kinds.line() || token.getType() == kinds.eol();
    }

    private static CommonToken empty(int type, int offset, CommonToken near) {
        CommonToken token = new CommonToken(near.getInputStream(), type, Token.DEFAULT_CHANNEL, offset, offset - 1);
        token.setLine(near.getLine());
        token.setCharPositionInLine(near.getCharPositionInLine());
        token.setText(""); // the end of the file has no stream to take a text from
        return token;
    }
}
