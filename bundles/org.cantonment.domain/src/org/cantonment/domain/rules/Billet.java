package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** A billet by its name: filled through exactly one of its places. A later line of the same name replaces it. */
public record Billet(Id id, String name, String label, List<Places> places, Validity when) implements Fact {

    public Billet {
        places = List.copyOf(places);
    }
}
