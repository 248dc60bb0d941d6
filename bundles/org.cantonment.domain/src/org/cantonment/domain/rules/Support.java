package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/**
 * Units taken beside formations: through exactly one of its places; with per, so many times as there are full
 * groups of perCount of those.
 */
public record Support(
        Id id, String label, List<Places> places, int perCount, List<Id> per, Validity when, List<Fact> facts,
        List<String> notes) implements Ruled {

    public Support {
        places = List.copyOf(places);
        per = List.copyOf(per);
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }
}
