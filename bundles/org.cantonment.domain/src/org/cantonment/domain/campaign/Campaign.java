package org.cantonment.domain.campaign;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.rules.Likeness;
import org.joda.money.CurrencyUnit;

/**
 * A season. Its weeks may stand in it or in books of their own.
 *
 * @param currency what its prices are in where they do not say, and what is reckoned in where no shelf says
 */
public record Campaign(
        Id id, String label, Optional<LocalDate> from, Optional<CurrencyUnit> currency, List<Id> plays, List<Player> players,
        List<Club> clubs, List<Table> tables, List<Role> roles, List<Round> rounds, List<Rate> rates, List<Show> shows,
        List<Excuse> excuses, List<Veteran> veterans, List<Scoring> scorings, List<Pairing> pairings,
        List<Casualties> casualties, List<Fund> funds, List<Tally> tallies, List<CheckUse> checks,
        List<Likeness> likenesses, List<Week> weeks, List<String> notes) implements Titled {

    public Campaign {
        plays = List.copyOf(plays);
        players = List.copyOf(players);
        clubs = List.copyOf(clubs);
        tables = List.copyOf(tables);
        roles = List.copyOf(roles);
        rounds = List.copyOf(rounds);
        rates = List.copyOf(rates);
        shows = List.copyOf(shows);
        excuses = List.copyOf(excuses);
        veterans = List.copyOf(veterans);
        scorings = List.copyOf(scorings);
        pairings = List.copyOf(pairings);
        casualties = List.copyOf(casualties);
        funds = List.copyOf(funds);
        tallies = List.copyOf(tallies);
        checks = List.copyOf(checks);
        likenesses = List.copyOf(likenesses);
        weeks = List.copyOf(weeks);
        notes = List.copyOf(notes);
    }

    /** Without a currency. */
    public Campaign(Id id, String label, Optional<LocalDate> from, List<Id> plays, List<Player> players, List<Club> clubs,
            List<Table> tables, List<Role> roles, List<Round> rounds, List<Rate> rates, List<Show> shows,
            List<Excuse> excuses, List<Veteran> veterans, List<Scoring> scorings, List<Pairing> pairings,
            List<Casualties> casualties, List<Fund> funds, List<Tally> tallies, List<CheckUse> checks,
            List<Likeness> likenesses, List<Week> weeks, List<String> notes) {
        this(id, label, from, Optional.empty(), plays, players, clubs, tables, roles, rounds, rates, shows, excuses, veterans,
                scorings, pairings, casualties, funds, tallies, checks, likenesses, weeks, notes);
    }
}
