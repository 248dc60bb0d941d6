package org.cantonment.desk.roundup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.domain.campaign.Claim;
import org.cantonment.domain.campaign.Correction;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.Forfeit;
import org.cantonment.domain.campaign.Game;
import org.cantonment.domain.campaign.Meeting;
import org.cantonment.domain.campaign.Plain;
import org.cantonment.domain.campaign.PlainVerb;
import org.cantonment.domain.campaign.ResultState;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.Struck;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;

/** What has been booked so far, corrections taken in: games, rests, and who has left. */
public final class Bookings {
    /** Somebody rested. @param round the round, so far as it can be told */
    public record Rest(int week, OptionalInt round, Id player) {
    }

    private final Season season;
    private final List<Pairing> pairings = new ArrayList<>();
    private final List<Booked> games = new ArrayList<>();
    private final List<Rest> rests = new ArrayList<>();
    private final Set<Id> withdrawn = new HashSet<>();
    private int newestWeek;
    private Optional<LocalDate> newestDay = Optional.empty();

    /** Reads the weeks of a season. */
    public Bookings(Season season) {
        this.season = season;
        for (Round round : season.rounds()) {
            round.deeds().forEach(deed -> arrange(deed, round.number()));
        }
        TreeMap<Integer, List<Deed>> deeds = corrected();
        deeds.forEach((week, all) -> all.forEach(deed -> {
            if (deed.doing() instanceof Meeting && deed.clauses().round().isPresent()) {
                arrange(deed, deed.clauses().round().getAsInt());
            }
        }));
        deeds.forEach((week, all) -> all.forEach(deed -> book(week, deed)));
        for (Week week : season.weeks()) {
            noteDays(week);
        }
    }

    /** The meetings arranged, in the order of rounds and then as written. */
    public List<Pairing> pairings() {
        return List.copyOf(pairings);
    }

    /** The games, by week and then as written. */
    public List<Booked> games() {
        return List.copyOf(games);
    }

    /** Who rested when. */
    public List<Rest> rests() {
        return List.copyOf(rests);
    }

    /** Who has withdrawn and not come back. */
    public Set<Id> withdrawn() {
        return Set.copyOf(withdrawn);
    }

    /** The newest week in which anything stands; 0 if there is none. */
    public int newestWeek() {
        return newestWeek;
    }

    /** The newest day that any line of a week names. */
    public Optional<LocalDate> newestDay() {
        return newestDay;
    }

    /** The game that was played for a meeting. */
    public Optional<Booked> gameOf(Pairing pairing) {
        return games.stream().filter(g -> g.round().orElse(-1) == pairing.round()
                && g.between(pairing.first(), pairing.second())).findFirst();
    }

    private TreeMap<Integer, List<Deed>> corrected() {
        TreeMap<Integer, List<Deed>> deeds = new TreeMap<>();
        for (Week week : season.weeks()) {
            deeds.computeIfAbsent(week.number(), n -> new ArrayList<>()).addAll(week.deeds());
        }
        for (Week week : season.weeks()) {
            for (Correction correction : week.corrections()) {
                List<Deed> then = deeds.computeIfAbsent(correction.week(), n -> new ArrayList<>());
                correction.lines().forEach(line -> correct(then, line));
            }
        }
        return deeds;
    }

    private static void correct(List<Deed> deeds, Struck line) {
        if (!line.not()) {
            deeds.add(line.deed());
            return;
        }
        for (int i = 0; i < deeds.size(); i++) {
            Deed deed = deeds.get(i);
            if (deed.who().equals(line.deed().who()) && deed.doing().equals(line.deed().doing())) {
                deeds.remove(i);
                return;
            }
        }
    }

    private void arrange(Deed deed, int round) {
        if (deed.doing() instanceof Meeting meeting) {
            pairings.add(new Pairing(round, deed.who(), meeting.other(), deed.clauses().at(), deed.clauses().session()));
        } else if (deed.doing() instanceof Plain plain && rested(plain)) {
            rests.add(new Rest(0, OptionalInt.of(round), deed.who()));
        }
    }

    private void book(int week, Deed deed) {
        if (deed.doing() instanceof Game game) {
            add(week, deed, deed.who(), game.other(), game.drawn() ? Booked.Kind.DRAWN : Booked.Kind.WON, game);
        } else if (deed.doing() instanceof Forfeit forfeit) {
            add(week, deed, forfeit.other(), deed.who(), Booked.Kind.FORFEITED, null);
        } else if (deed.doing() instanceof Plain plain) {
            if (rested(plain)) {
                rests.add(new Rest(week, deed.clauses().round(), deed.who()));
            } else if (plain.verb() == PlainVerb.WITHDREW) {
                withdrawn.add(deed.who());
            } else {
                withdrawn.remove(deed.who());
            }
        }
    }

    private static boolean rested(Plain plain) {
        return plain.verb() == PlainVerb.RESTED || plain.verb() == PlainVerb.RESTS;
    }

    private void add(int week, Deed deed, Id first, Id second, Booked.Kind kind, Game game) {
        boolean disputed = deed.clauses().state().filter(s -> s == ResultState.DISPUTED).isPresent()
                || deed.clauses().state().isEmpty() && deed.inner().stream().anyMatch(d -> d.doing() instanceof Claim);
        games.add(new Booked(week, roundOf(deed, first, second), first, second, kind,
                game == null ? Optional.empty() : game.result(), deed.clauses().on(), disputed));
    }

    // Said, else by the day, else by the oldest meeting of the two that has no game yet.
    private OptionalInt roundOf(Deed deed, Id first, Id second) {
        if (deed.clauses().round().isPresent()) {
            return deed.clauses().round();
        }
        if (deed.clauses().on().isPresent()) {
            LocalDate on = deed.clauses().on().get();
            for (Round round : season.rounds()) {
                if (round.play().isPresent() && !on.isBefore(round.play().get().from())
                        && !on.isAfter(round.play().get().to())) {
                    return OptionalInt.of(round.number());
                }
            }
        }
        return pairings.stream()
                .filter(p -> p.first().equals(first) && p.second().equals(second)
                        || p.first().equals(second) && p.second().equals(first))
                .filter(p -> gameOf(p).isEmpty()).mapToInt(Pairing::round).min();
    }

    private void noteDays(Week week) {
        newestWeek = Math.max(newestWeek, week.number());
        week.deeds().forEach(deed -> {
            deed.clauses().on().ifPresent(this::noteDay);
            deed.clauses().known().ifPresent(this::noteDay);
        });
        week.acceptances().forEach(a -> a.on().ifPresent(this::noteDay));
        week.sealings().forEach(s -> s.on().ifPresent(this::noteDay));
    }

    private void noteDay(LocalDate day) {
        if (newestDay.isEmpty() || day.isAfter(newestDay.get())) {
            newestDay = Optional.of(day);
        }
    }
}
