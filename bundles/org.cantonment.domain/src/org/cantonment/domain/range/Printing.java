package org.cantonment.domain.range;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.common.Validity;

/** One of the contents that a box has had under the same code. */
public record Printing(
        Id id, String label, Validity when, List<Content> contents, List<Cap> caps, List<String> notes) implements Titled {

    public Printing {
        contents = List.copyOf(contents);
        caps = List.copyOf(caps);
        notes = List.copyOf(notes);
    }
}
