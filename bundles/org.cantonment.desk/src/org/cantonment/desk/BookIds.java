package org.cantonment.desk;

import java.util.Optional;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.NamesBook;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;

/** The id of a book, whatever kind of book it is. */
final class BookIds {
    private BookIds() {
    }

    static Optional<Id> of(Object meaning) {
        if (meaning instanceof ForceList list) {
            return Optional.of(list.id());
        }
        if (meaning instanceof RuleSet rules) {
            return Optional.of(rules.id());
        }
        if (meaning instanceof Range range) {
            return Optional.of(range.id());
        }
        if (meaning instanceof Shelf shelf) {
            return Optional.of(shelf.id());
        }
        if (meaning instanceof Campaign campaign) {
            return Optional.of(campaign.id());
        }
        if (meaning instanceof Week week) {
            return Optional.of(week.id());
        }
        return meaning instanceof NamesBook names ? Optional.of(names.id()) : Optional.empty();
    }
}
