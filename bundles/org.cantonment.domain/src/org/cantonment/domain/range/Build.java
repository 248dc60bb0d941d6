package org.cantonment.domain.range;

import java.util.List;

import org.cantonment.domain.common.Id;

/** One result that a part can be built as, and the bits left over. */
public record Build(Id id, List<Content> gives, List<Content> leaves) {

    public Build {
        gives = List.copyOf(gives);
        leaves = List.copyOf(leaves);
    }
}
