package org.cantonment.domain.expression;

import java.util.List;

/** One thing asked or worked out; its parts have the types that it needs. Equal when it says the same. */
public sealed interface Expression permits
        Figure, YesNo, NameUse, Arithmetic, Rounded, Comparison, Logic, Negation, Gathering,
        Quantity, OptionsTaken, PiecesOf, Given, EraIs, Own {

    /** What it is worth. */
    Type type();

    /** What it is worked out of, in the order of the text. */
    default List<Expression> parts() {
        return List.of();
    }
}
