package org.cantonment.desk.roundup;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.Due;
import org.cantonment.domain.campaign.Round;

/** What is due next, soonest first. */
final class DueNext {
    private static final int MOST = 5;

    /** A date to keep. */
    private record Term(LocalDate date, Optional<LocalTime> time, int round, String what) {
        String line() {
            return date + " " + time.map(LocalTime::toString).orElse("     ") + "  " + what + ", round " + round;
        }
    }

    private DueNext() {
    }

    /** At most five terms of the current round and those after it, none that lies before the round-up's day. */
    static List<String> of(Season season, Roundup roundup) {
        List<Term> terms = new ArrayList<>();
        int from = roundup.round().map(Round::number).orElse(1);
        for (Round round : season.rounds()) {
            if (round.number() >= from - 1) {
                collect(round, terms);
            }
        }
        return terms.stream().filter(t -> roundup.today().isEmpty() || !t.date().isBefore(roundup.today().get()))
                .sorted(Comparator.comparing(Term::date)
                        .thenComparing(t -> t.time().orElse(LocalTime.MAX)).thenComparing(Term::round)
                        .thenComparing(Term::what))
                .limit(MOST).map(Term::line).toList();
    }

    private static void collect(Round round, List<Term> terms) {
        for (Due due : round.dues()) {
            terms.add(new Term(due.date(), due.time(), round.number(), RoundupText.word(due.what())));
        }
        round.play().ifPresent(play -> {
            terms.add(new Term(play.from(), Optional.empty(), round.number(), "play begins"));
            terms.add(new Term(play.to(), Optional.empty(), round.number(), "last day of play"));
        });
    }
}
