package org.cantonment.rules.expression;

import org.cantonment.domain.expression.Ratio;

/** A number. */
public record Amount(Ratio ratio) implements Value {

    @Override
    public String words() {
        return ratio.toString();
    }
}
