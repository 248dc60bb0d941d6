package org.cantonment.domain.range;

import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/**
 * What lies in a box and is built as one of several results.
 *
 * @param minutes how long one takes to build, where a build does not say otherwise; empty if nobody says
 */
public record Part(Id id, String label, Fixing fixing, List<Build> builds, List<Cap> caps, OptionalInt minutes,
        List<String> notes) implements Titled {

    public Part {
        builds = List.copyOf(builds);
        caps = List.copyOf(caps);
        notes = List.copyOf(notes);
    }

    /** Nobody says how long one takes to build. */
    public Part(Id id, String label, Fixing fixing, List<Build> builds, List<Cap> caps, List<String> notes) {
        this(id, label, fixing, builds, caps, OptionalInt.empty(), notes);
    }

    /** How long one takes that is built in one of its ways, in minutes; empty if nobody says. */
    public OptionalInt minutes(Build build) {
        return build.minutes().isPresent() ? build.minutes() : minutes;
    }
}
