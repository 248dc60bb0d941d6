package org.cantonment.rules.expression;

import org.cantonment.domain.expression.Ratio;

/** What an expression comes to: a number, a yes or no, or a gap. */
public sealed interface Value permits Amount, Answer, Gap {

    /** A whole number. */
    static Value of(long number) {
        return of(Ratio.of(number));
    }

    /** A number; a gap if it is beyond all measure. */
    static Value of(Ratio number) {
        return number.beyond() ? Gap.BEYOND : new Amount(number);
    }

    /** Yes or no. */
    static Value of(boolean so) {
        return so ? Answer.YES : Answer.NO;
    }

    /** As people say it. */
    String words();
}
