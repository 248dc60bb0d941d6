package org.cantonment.domain.campaign;

import java.util.List;

/** Rolled these values. */
public record Rolled(List<Integer> values) implements Doing {

    public Rolled {
        values = List.copyOf(values);
    }
}
