package org.cantonment.domain.common;

import java.util.List;

/** In these eras and no other. */
public record InEras(List<Id> eras) implements When {

    public InEras {
        eras = List.copyOf(eras);
    }
}
