package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;

/** So many pieces of these types or families, or items, in any mixture. */
public record Need(int count, List<Id> anyOf) {

    public Need {
        anyOf = List.copyOf(anyOf);
    }
}
