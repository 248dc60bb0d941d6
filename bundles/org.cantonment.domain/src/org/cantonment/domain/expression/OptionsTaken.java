package org.cantonment.domain.expression;

import java.util.Optional;

/** How many options are taken by those who are meant, or how many of one option. */
public record OptionsTaken(Optional<String> option, Selection of) implements Expression {

    @Override
    public Type type() {
        return Type.NUMBER;
    }
}
