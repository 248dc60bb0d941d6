package org.cantonment.editor.api;

import java.util.List;
import java.util.Objects;

/**
 * What a check says about a stretch of one file's text.
 *
 * @param severity how grave it is
 * @param code a stable name of the kind of finding
 * @param message one or two plain sentences for the person at the keyboard
 * @param rule the rule that was broken; {@link Rule#NONE} if it is the language itself
 * @param advice what would mend it, where no edit of this file does; empty if there is nothing to say
 * @param offset where the stretch begins, in characters from the start of the file
 * @param length how many characters it covers; may be 0
 * @param fixes edits that mend it, the best first; counted in the text that the finding was made on
 */
public record Finding(Severity severity, String code, String message, Rule rule, String advice, int offset,
        int length, List<Fix> fixes) {

    /** Checks the place and copies the fixes. */
    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(advice, "advice");
        fixes = List.copyOf(fixes);
        if (offset < 0 || length < 0) {
            throw new IllegalArgumentException("offset " + offset + ", length " + length);
        }
    }

    /**
     * A finding of the language itself, without a fix.
     *
     * @param severity how grave it is
     * @param code a stable name of the kind of finding
     * @param message one or two plain sentences
     * @param offset where the stretch begins, in characters
     * @param length how many characters it covers
     */
    public Finding(Severity severity, String code, String message, int offset, int length) {
        this(severity, code, message, Rule.NONE, "", offset, length, List.of());
    }

    /**
     * The same said of another place, without its fixes: two findings are the same for whoever reads them
     * if this makes them equal.
     *
     * @param place characters from the start of the file
     * @param width how many characters it covers
     * @return the bare finding
     */
    public Finding bareAt(int place, int width) {
        return new Finding(severity, code, message, rule, advice, place, width, List.of());
    }

    /**
     * The same finding without its fixes.
     *
     * @return the bare finding
     */
    public Finding bare() {
        return bareAt(offset, length);
    }
}
