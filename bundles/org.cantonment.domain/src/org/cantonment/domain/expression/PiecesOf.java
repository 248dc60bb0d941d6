package org.cantonment.domain.expression;

import java.util.List;

import org.cantonment.domain.common.Id;

/** How many pieces of these types and families, or items: that the list needs, or that the player has. */
public record PiecesOf(List<Id> what, State state) implements Expression {

    /** Needed: every piece that the need may be filled with is meant. Owned: built. Painted: built and painted. */
    public enum State {
        NEEDED, OWNED, PAINTED
    }

    public PiecesOf {
        what = List.copyOf(what);
    }

    @Override
    public Type type() {
        return Type.NUMBER;
    }
}
