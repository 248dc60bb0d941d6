package org.cantonment.domain.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.joda.money.CurrencyUnit;

/** What a player, a household or the club owns. */
public record Shelf(
        Id id, boolean club, List<Id> owners, Optional<CurrencyUnit> currency, Optional<LocalDate> on,
        List<Holding> holdings, List<Oddment> oddments, List<Wish> wishes, List<String> notes) {

    public Shelf {
        owners = List.copyOf(owners);
        holdings = List.copyOf(holdings);
        oddments = List.copyOf(oddments);
        wishes = List.copyOf(wishes);
        notes = List.copyOf(notes);
    }

    /** A shelf of nobody in particular with these things on it. */
    public static Shelf plain(Id id, List<Holding> holdings) {
        return new Shelf(id, false, List.of(), Optional.empty(), Optional.empty(), holdings, List.of(), List.of(), List.of());
    }
}
