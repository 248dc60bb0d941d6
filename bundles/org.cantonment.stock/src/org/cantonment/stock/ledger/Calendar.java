package org.cantonment.stock.ledger;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Clauses;
import org.cantonment.domain.campaign.Round;

/** Which day a week begins with, and which round a day belongs to. */
final class Calendar {

    /** Of a season that does not say when it begins: weeks follow each other, and no day is in any. */
    private static final LocalDate NO_DAY = LocalDate.EPOCH;

    private final Optional<Campaign> campaign;

    Calendar(Optional<Campaign> campaign) {
        this.campaign = campaign;
    }

    /** Whether the season says when it begins. */
    boolean dated() {
        return campaign.flatMap(Campaign::from).isPresent();
    }

    /** The first day of a week. */
    LocalDate begin(int week) {
        return campaign.flatMap(Campaign::from).orElse(NO_DAY).plusWeeks(week - 1L);
    }

    /** The day of a deed: as it says, else the first of its week. */
    LocalDate day(int week, Clauses clauses) {
        return clauses.on().filter(day -> dated()).orElseGet(() -> begin(week));
    }

    /** The round of a game: as it says, else the one that is played on that day, else the last one begun before it. */
    OptionalInt round(LocalDate day, Clauses clauses) {
        if (clauses.round().isPresent() || campaign.isEmpty()) {
            return clauses.round();
        }
        return campaign.get().rounds().stream().filter(round -> round.play().isPresent()
                && !round.play().get().from().isAfter(day)).max(Comparator.comparingInt(Round::number)).stream()
                .mapToInt(Round::number).findFirst();
    }
}
