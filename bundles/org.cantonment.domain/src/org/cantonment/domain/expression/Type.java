package org.cantonment.domain.expression;

/** What an expression is worth: a number, or yes or no. */
public enum Type {
    NUMBER("a number"), YES_NO("a yes or no");

    private final String words;

    Type(String words) {
        this.words = words;
    }

    /** "a number", "a yes or no". */
    public String words() {
        return words;
    }
}
