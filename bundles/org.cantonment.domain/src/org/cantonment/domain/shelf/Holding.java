package org.cantonment.domain.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Fixing;
import org.joda.money.Money;

/**
 * A line of a shelf: a box is unopened unless something was made of it, a part unbuilt, a piece built. The money
 * was paid for one.
 */
public record Holding(
        Id id, Certainty certainty, int count, Id what, List<StateShare> states, Optional<Fixing> fixing,
        Optional<Money> paid, Optional<LocalDate> on, Optional<Source> from, Optional<Id> printing,
        List<Made> made, List<String> notes) {

    public Holding {
        states = List.copyOf(states);
        made = List.copyOf(made);
        notes = List.copyOf(notes);
    }

    /** So many of a thing for certain, and nothing else known of them but the day they came. */
    public static Holding plain(Id id, int count, Id what, Optional<LocalDate> on) {
        return new Holding(id, Certainty.KNOWN, count, what, List.of(), Optional.empty(), Optional.empty(), on,
                Optional.empty(), Optional.empty(), List.of(), List.of());
    }
}
