package org.cantonment.editor.api;

import java.util.Objects;

/**
 * The rule that a finding appeals to.
 *
 * @param name the rule as a person would name it; empty if there is none but the language itself
 * @param uri the file in which it stands; empty if it stands in none
 * @param line its line there, from 1; 0 if it stands in none
 */
public record Rule(String name, String uri, int line) {

    /** No rule but the language itself. */
    public static final Rule NONE = new Rule("", "", 0);

    /** Refuses nulls. */
    public Rule {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(uri, "uri");
        if (line < 0) {
            throw new IllegalArgumentException("line " + line);
        }
    }

    /**
     * Whether one can go and look at it.
     *
     * @return true if it stands in a file
     */
    public boolean isPlaced() {
        return line > 0;
    }

    /**
     * The rule with its line.
     *
     * @return what is shown; empty if there is no rule
     */
    public String label() {
        return isPlaced() ? name + ", line " + line : name;
    }
}
