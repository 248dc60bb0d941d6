package org.cantonment.domain.expression;

import java.util.List;

import org.cantonment.domain.common.Id;

/** Whether the era is one of these. */
public record EraIs(List<Id> eras) implements Expression {

    public EraIs {
        eras = List.copyOf(eras);
    }

    @Override
    public Type type() {
        return Type.YES_NO;
    }
}
