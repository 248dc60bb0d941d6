package org.cantonment.domain.expression;

import java.util.List;

/** Two numbers put together. */
public record Arithmetic(Operator operator, Expression left, Expression right) implements Expression {

    /** How: PERCENT_OF is the right in hundredths of the left, the last two keep the left within the right. */
    public enum Operator {
        PLUS("plus"), MINUS("minus"), TIMES("times"), DIVIDED_BY("divided by"), PERCENT_OF("percent of"),
        BUT_AT_MOST("but at most"), BUT_AT_LEAST("but at least");

        private final String words;

        Operator(String words) {
            this.words = words;
        }

        /** As in the notation. */
        public String words() {
            return words;
        }

        /** What two numbers come to; beyond all measure if it is that, or if they are divided by 0. */
        public Ratio of(Ratio left, Ratio right) {
            return switch (this) {
                case PLUS -> left.plus(right);
                case MINUS -> left.minus(right);
                case TIMES -> left.times(right);
                case DIVIDED_BY -> left.dividedBy(right);
                case PERCENT_OF -> left.times(right).dividedBy(HUNDRED);
                case BUT_AT_MOST -> left.compareTo(right) > 0 ? right : left;
                case BUT_AT_LEAST -> right.beyond() || left.compareTo(right) < 0 ? right : left;
            };
        }
    }

    private static final Ratio HUNDRED = Ratio.of(100);

    @Override
    public Type type() {
        return Type.NUMBER;
    }

    @Override
    public List<Expression> parts() {
        return List.of(left, right);
    }
}
