package org.cantonment.editor.api;

import java.util.List;
import java.util.Objects;

/**
 * What a check says about a stretch of one file's text.
 *
 * @param severity how grave it is
 * @param code a stable name of the kind of finding, by which fixes and tests know it
 * @param message one or two plain sentences for the person at the keyboard
 * @param rule the rule that was broken, as a person would name it; empty if it is the language itself
 * @param offset where the stretch begins, in characters from the start of the file
 * @param length how many characters it covers; may be 0
 * @param data what the check hands on to its own fixes; never shown
 */
public record Finding(Severity severity, String code, String message, String rule, int offset, int length,
        List<String> data) {

    /** Checks the place and copies the data. */
    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(rule, "rule");
        data = List.copyOf(data);
        if (offset < 0 || length < 0) {
            throw new IllegalArgumentException("offset " + offset + ", length " + length);
        }
    }

    /**
     * A finding of the language itself, without data.
     *
     * @param severity how grave it is
     * @param code a stable name of the kind of finding
     * @param message one or two plain sentences
     * @param offset where the stretch begins, in characters
     * @param length how many characters it covers
     */
    public Finding(Severity severity, String code, String message, int offset, int length) {
        this(severity, code, message, "", offset, length, List.of());
    }

    /**
     * Whether both say the same, wherever they stand.
     *
     * @param other another finding
     * @return true if everything but the place is equal
     */
    public boolean saysTheSameAs(Finding other) {
        return severity == other.severity && code.equals(other.code) && message.equals(other.message)
                && rule.equals(other.rule) && data.equals(other.data);
    }
}
