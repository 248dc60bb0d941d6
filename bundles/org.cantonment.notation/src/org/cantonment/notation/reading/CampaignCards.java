package org.cantonment.notation.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Casualties;
import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.campaign.Club;
import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.campaign.Fund;
import org.cantonment.domain.campaign.Pairing;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.Rate;
import org.cantonment.domain.campaign.Role;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.Scoring;
import org.cantonment.domain.campaign.Show;
import org.cantonment.domain.campaign.Table;
import org.cantonment.domain.campaign.Tally;
import org.cantonment.domain.campaign.Veteran;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.model.book.Line;
import org.cantonment.model.book.Named;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Place;
import org.cantonment.model.campaign.Plays;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.reading.Under.Taken;

/** The cards of one campaign as they come in. */
final class CampaignCards {

    private final Reading reading;
    private final Phrases phrases;
    private final OrderReader orders;
    private final DeedReader deedReader;
    private final WeekReader loose;
    private final Set<Integer> roundNumbers = new HashSet<>();
    private final Set<Integer> weekNumbers = new HashSet<>();
    private final List<Id> plays = new ArrayList<>();
    private final List<Player> players = new ArrayList<>();
    private final List<Club> clubs = new ArrayList<>();
    private final List<Table> tables = new ArrayList<>();
    private final List<Role> roles = new ArrayList<>();
    private final List<Round> rounds = new ArrayList<>();
    private final List<Rate> rates = new ArrayList<>();
    private final List<Show> shows = new ArrayList<>();
    private final List<Excuse> excuses = new ArrayList<>();
    private final List<Veteran> veterans = new ArrayList<>();
    private final List<Scoring> scorings = new ArrayList<>();
    private final List<Pairing> pairings = new ArrayList<>();
    private final List<Casualties> casualties = new ArrayList<>();
    private final List<Fund> funds = new ArrayList<>();
    private final List<Tally> tallies = new ArrayList<>();
    private final List<CheckUse> checks = new ArrayList<>();
    private final List<Likeness> likenesses = new ArrayList<>();
    private final List<Week> weeks = new ArrayList<>();
    private List<String> notesOfFirstWeek = List.of();

    CampaignCards(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
        orders = new OrderReader(reading, phrases);
        deedReader = new DeedReader(reading, phrases);
        loose = new WeekReader(reading, phrases, deedReader);
    }

    /** Deeds that stand in no week were done in the first, whether it has a card or not. */
    Campaign campaign(Id id, String label, Optional<LocalDate> from, List<String> notes) {
        if (!loose.empty() || weekNumbers.contains(1)) {
            Id first = reading.at(weekId(1), reading.places().get(id));
            weeks.add(0, loose.week(first, 1, Optional.of(id), notesOfFirstWeek));
        }
        return new Campaign(id, label, from, phrases.currency(), plays, players, clubs, tables, roles, rounds, rates, shows,
                excuses, veterans, scorings, pairings, casualties, funds, tallies, checks, likenesses, weeks, notes);
    }

    Taken take(Line card, Id id) {
        if (card instanceof org.cantonment.model.campaign.Player player) {
            players.add(new PlayerReader(reading, player).read());
        } else if (card instanceof org.cantonment.model.campaign.Round round) {
            round(round);
        } else if (card instanceof org.cantonment.model.campaign.Week week) {
            week(week);
        } else if (card instanceof org.cantonment.model.campaign.Scoring scoring) {
            scorings.add(new ScoringReader(reading, phrases, scoring).read());
        } else if (card instanceof org.cantonment.model.campaign.Casualties cost) {
            casualties.add(new LossReader(reading, phrases).casualties(cost));
        } else if (card instanceof org.cantonment.model.campaign.Fund fund) {
            funds.add(new LossReader(reading, phrases).fund(fund));
        } else if (card instanceof org.cantonment.model.ruleset.Likeness likeness) {
            likenesses.add(new LikenessReader(reading, phrases).read(likeness));
        } else {
            return name(card) || order(card, id) ? Taken.WITH_LINES : loose.take(card, id);
        }
        return Taken.WITH_LINES;
    }

    /** Cards that are a name and nothing more. */
    private boolean name(Line card) {
        if (card instanceof org.cantonment.model.campaign.Club club) {
            clubs.add(new Club(only(club, club, "club"), Reading.label(club), Reading.notes(card.getLines())));
        } else if (card instanceof Place place) {
            tables.add(new Table(only(place, place, "table"), Reading.label(place), Reading.notes(card.getLines())));
        } else if (card instanceof org.cantonment.model.campaign.Role role) {
            roles.add(new Role(only(role, role, "role"), Reading.label(role), Reading.notes(card.getLines())));
        } else if (card instanceof org.cantonment.model.campaign.Tally tally) {
            tallies.add(new Tally(only(tally, tally, "tally"), Reading.label(tally), Reading.notes(card.getLines())));
        } else {
            return false;
        }
        return true;
    }

    private Id only(Named named, Line card, String kind) {
        Id id = reading.id(named);
        Under.onlyNotes(reading, id, card.getLines(), Under.words(kind, named));
        return id;
    }

    private boolean order(Line card, Id id) {
        if (card instanceof Plays rules) {
            Under.onlyNotes(reading, id, rules.getLines(), "what is played");
            plays.addAll(Reading.refs(rules.getRules()));
        } else if (card instanceof org.cantonment.model.campaign.Rate rate) {
            orders.rate(rate, id).ifPresent(rates::add);
        } else if (card instanceof org.cantonment.model.campaign.Show show) {
            orders.show(show, id).ifPresent(shows::add);
        } else if (card instanceof org.cantonment.model.campaign.Excuse excuse) {
            orders.excuse(excuse, id).ifPresent(excuses::add);
        } else if (card instanceof org.cantonment.model.campaign.Veteran veteran) {
            orders.veteran(veteran).ifPresent(veterans::add);
        } else if (card instanceof org.cantonment.model.campaign.Pairing pairing) {
            orders.pairing(pairing, id).ifPresent(pairings::add);
        } else if (card instanceof org.cantonment.model.campaign.CheckUse check) {
            orders.check(check, id).ifPresent(checks::add);
        } else {
            return false;
        }
        return true;
    }

    private void round(org.cantonment.model.campaign.Round round) {
        if (round.getNumber() == null) {
            return;
        }
        int number = reading.atLeastOne(round, CampaignPackage.Literals.ROUND__NUMBER, round.getNumber());
        if (!roundNumbers.add(number)) {
            reading.problem(round, CampaignPackage.Literals.ROUND__NUMBER, Severity.BREACH, Codes.TWICE,
                    "Round " + number + " stands above already; this card is left out.");
            return;
        }
        Id id = reading.at(Id.of(reading.bookId().text(), "round-" + number), round);
        rounds.add(new RoundReader(reading, phrases, deedReader, round).read(id, number));
    }

    private void week(org.cantonment.model.campaign.Week week) {
        if (week.getNumber() == null) {
            return;
        }
        int number = reading.atLeastOne(week, CampaignPackage.Literals.WEEK__NUMBER, week.getNumber());
        if (!weekNumbers.add(number)) {
            reading.problem(week, CampaignPackage.Literals.WEEK__NUMBER, Severity.BREACH, Codes.TWICE,
                    "Week " + number + " stands above already; this card is left out.");
            return;
        }
        Id id = reading.at(weekId(number), week);
        WeekReader deeds = number == 1 ? loose : new WeekReader(reading, phrases, deedReader);
        Under.each(reading, id, week.getLines(), "week " + number, deeds::take);
        List<String> notes = Reading.notes(week.getLines());
        if (number == 1) {
            notesOfFirstWeek = notes;
        } else {
            weeks.add(deeds.week(id, number, Optional.of(reading.bookId()), notes));
        }
    }

    private Id weekId(int number) {
        return Id.of(reading.bookId().text(), "week-" + number);
    }
}
