package org.cantonment.domain.campaign;

import java.util.List;

import org.cantonment.domain.common.Id;

/** The names of a campaign's players, kept apart from all else. */
public record NamesBook(Id id, Id campaign, List<NameOf> names, List<String> notes) {

    public NamesBook {
        names = List.copyOf(names);
        notes = List.copyOf(notes);
    }
}
