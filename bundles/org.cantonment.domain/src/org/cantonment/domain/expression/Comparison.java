package org.cantonment.domain.expression;

import java.util.List;

/** Two values of one type held against each other; only numbers are more or less. */
public record Comparison(Relation relation, Expression left, Expression right) implements Expression {

    /** How. */
    public enum Relation {
        IS("is"), IS_NOT("is not"), AT_LEAST("is at least"), AT_MOST("is at most"), MORE("is more than"),
        LESS("is less than");

        private final String words;

        Relation(String words) {
            this.words = words;
        }

        /** As in the notation. */
        public String words() {
            return words;
        }

        /** Whether it holds of values that compare so: negative for a left that is less. */
        public boolean holds(int compared) {
            return switch (this) {
                case IS -> compared == 0;
                case IS_NOT -> compared != 0;
                case AT_LEAST -> compared >= 0;
                case AT_MOST -> compared <= 0;
                case MORE -> compared > 0;
                case LESS -> compared < 0;
            };
        }
    }

    @Override
    public Type type() {
        return Type.YES_NO;
    }

    @Override
    public List<Expression> parts() {
        return List.of(left, right);
    }
}
