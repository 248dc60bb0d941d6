package org.cantonment.desk.roundup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.PlayDates;
import org.cantonment.domain.campaign.Round;

/** Which round the campaign is in, and why. */
record CurrentRound(Optional<Round> round, String why) {
    static CurrentRound of(Season season, Bookings bookings, Optional<LocalDate> on) {
        List<Round> rounds = season.rounds();
        if (rounds.isEmpty()) {
            return new CurrentRound(Optional.empty(), "the campaign has no rounds");
        }
        return on.map(day -> byDay(rounds, day)).orElseGet(() -> byBookings(rounds, bookings));
    }

    private static CurrentRound byDay(List<Round> rounds, LocalDate day) {
        for (Round round : rounds) {
            Optional<PlayDates> play = round.play();
            if (play.isPresent() && !day.isAfter(play.get().to())) {
                boolean on = !day.isBefore(play.get().from());
                return new CurrentRound(Optional.of(round), on ? "played on " + day : "the next one after " + day);
            }
        }
        return new CurrentRound(Optional.of(rounds.get(rounds.size() - 1)), "no later one has dates of play");
    }

    private static CurrentRound byBookings(List<Round> rounds, Bookings bookings) {
        int newest = bookings.games().stream().mapToInt(g -> g.round().orElse(0)).max().orElse(0);
        if (newest == 0) {
            return new CurrentRound(Optional.of(rounds.get(0)), "no game is booked yet");
        }
        int open = newest;
        boolean complete = complete(newest, bookings);
        Optional<Round> current = rounds.stream()
                .filter(r -> complete ? r.number() > open : r.number() >= open).findFirst();
        if (current.isEmpty()) {
            return new CurrentRound(Optional.of(rounds.get(rounds.size() - 1)), "all its games are booked");
        }
        return new CurrentRound(current, complete
                ? "all games of round " + newest + " are booked" : "the newest games booked are its own");
    }

    private static boolean complete(int round, Bookings bookings) {
        List<Pairing> arranged = bookings.pairings().stream().filter(p -> p.round() == round).toList();
        return !arranged.isEmpty() && arranged.stream().allMatch(p -> bookings.gameOf(p).isPresent());
    }
}
