package org.cantonment.domain.range;

import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/**
 * One result that a part can be built as, and the bits left over.
 *
 * @param minutes how long it takes, if not as long as the part says; see {@link Part#minutes(Build)}
 */
public record Build(Id id, List<Content> gives, List<Content> leaves, OptionalInt minutes) {

    public Build {
        gives = List.copyOf(gives);
        leaves = List.copyOf(leaves);
    }

    /** It takes as long as the part says. */
    public Build(Id id, List<Content> gives, List<Content> leaves) {
        this(id, gives, leaves, OptionalInt.empty());
    }
}
