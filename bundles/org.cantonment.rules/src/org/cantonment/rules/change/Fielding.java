package org.cantonment.rules.change;

import java.util.List;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;

/** Says whether what a list needs is there, for changes with what a player owns. */
@FunctionalInterface
public interface Fielding {

    /** Whatever is needed is there. */
    Fielding ALL = needs -> Set.of();

    /**
     * The entries of which not all can be fielded: empty if everything is there, else a set of entries that together need
     * more than there is for them, so that one of them must go. The same needs always give the same entries.
     */
    Set<Id> lacking(List<Requirement> needs);
}
