package org.cantonment.stock.reach;

import java.util.List;

import org.cantonment.domain.common.Id;

/** A formation as a shelf sees it; formations in it are taken apart into their own billets. */
public record Shape(Id formation, List<Places> places) {

    public Shape {
        places = List.copyOf(places);
    }
}
