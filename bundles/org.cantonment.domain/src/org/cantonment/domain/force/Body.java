package org.cantonment.domain.force;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/** What stands in a list, a contingent or a formation: its entries, and those under the word support. */
public record Body(List<Entry> entries, List<Entry> supports) {

    /** Nothing. */
    public static final Body EMPTY = new Body(List.of(), List.of());

    public Body {
        entries = List.copyOf(entries);
        supports = List.copyOf(supports);
    }

    /** What an entry in it takes, however deep it stands; empty if there is no such entry. */
    Optional<Id> takenAt(Id entry) {
        for (List<Entry> some : List.of(entries, supports)) {
            for (Entry one : some) {
                Optional<Id> found = one.id().equals(entry) ? Optional.of(one.what()) : one.body().takenAt(entry);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}
