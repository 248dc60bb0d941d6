package org.cantonment.desk.roundup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.Id;

/**
 * The week's round-up of a campaign. There is no clock in it: it stands at the newest thing booked, or on a given day.
 *
 * @param season    the campaign
 * @param bookings  what has been booked
 * @param round     the current round; empty if the campaign has none
 * @param why       why that one is current, as a phrase
 * @param today     the day the round-up stands on: the given one, else the newest booked one
 * @param table     how everybody has fared
 * @param expected  who should hand in a list for the current round
 * @param lists     the lists for the current round, in the order of the players
 * @param eraTitle  what people call an era
 */
public record Roundup(Season season, Bookings bookings, Optional<Round> round, String why, Optional<LocalDate> today,
        List<Standing> table, List<Player> expected, List<ListLook> lists, Function<Id, String> eraTitle) {
    public Roundup {
        table = List.copyOf(table);
        expected = List.copyOf(expected);
        lists = List.copyOf(lists);
    }

    /**
     * Draws up a round-up.
     *
     * @param season the campaign
     * @param on     the day to stand on; empty for the newest booked one
     * @param look   gives a player's list for a round, if there is one
     * @param eraTitle gives what people call an era
     */
    public static Roundup of(Season season, Optional<LocalDate> on, BiFunction<Id, Integer, Optional<ListLook>> look,
            Function<Id, String> eraTitle) {
        Bookings bookings = new Bookings(season);
        CurrentRound current = CurrentRound.of(season, bookings, on);
        List<Player> expected = new ArrayList<>();
        List<ListLook> lists = new ArrayList<>();
        if (current.round().isPresent()) {
            int number = current.round().get().number();
            for (Player player : season.playersIn(number)) {
                if (!bookings.withdrawn().contains(player.id())) {
                    expected.add(player);
                    look.apply(player.id(), number).ifPresent(lists::add);
                }
            }
        }
        return new Roundup(season, bookings, current.round(), current.why(), on.or(bookings::newestDay),
                Standings.of(season, bookings), expected, lists, eraTitle);
    }

    /** The list of a player for the current round. */
    public Optional<ListLook> listOf(Id player) {
        return lists.stream().filter(l -> l.player().equals(player)).findFirst();
    }
}
