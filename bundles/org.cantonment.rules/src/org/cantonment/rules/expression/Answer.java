package org.cantonment.rules.expression;

/** Yes or no. */
public enum Answer implements Value {
    YES, NO;

    @Override
    public String words() {
        return this == YES ? "yes" : "no";
    }
}
