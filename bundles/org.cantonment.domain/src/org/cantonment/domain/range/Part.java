package org.cantonment.domain.range;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/** What lies in a box and is built as one of several results. */
public record Part(
        Id id, String label, Fixing fixing, List<Build> builds, List<Cap> caps, List<String> notes) implements Titled {

    public Part {
        builds = List.copyOf(builds);
        caps = List.copyOf(caps);
        notes = List.copyOf(notes);
    }
}
