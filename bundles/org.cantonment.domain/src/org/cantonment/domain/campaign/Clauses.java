package org.cantonment.domain.campaign;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Source;

/**
 * What was said beside a deed: the exchange, the source, the day it happened, the day it was known, the table, the
 * end of a loan, the round and session it belongs to.
 */
public record Clauses(
        Optional<Exchange> exchange, Optional<Source> from, Optional<LocalDate> on, Optional<LocalDate> known,
        Optional<Id> at, OptionalInt untilWeek, OptionalInt round, Optional<Id> session,
        Optional<ResultState> state, boolean again, boolean late, Optional<String> because) {

    /** Nothing said beside the deed. */
    public static final Clauses NONE = new Clauses(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(),
            Optional.empty(), false, false, Optional.empty());
}
