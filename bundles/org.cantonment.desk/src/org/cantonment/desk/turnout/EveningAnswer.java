package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.turnout.Fielding.Terms;
import org.cantonment.desk.turnout.Fielding.Unclear;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.Meeting;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.Session;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.ledger.Inventory;
import org.cantonment.stock.session.Evening;
import org.cantonment.stock.session.Lending;
import org.cantonment.stock.session.Seat;

/**
 * Whether everybody can play on one evening.
 *
 * @param session what the evening is called
 * @param round   its round
 * @param lists   the lists that are played, with what is lent reckoned in
 * @param missing players who are paired but have no list for the round
 * @param promised whole sentences: what the lists say is borrowed, which is handed over before anybody lends
 * @param shared whose together is what is lent by nobody alone, by its lender
 * @param evening who lends what to whom
 * @param meanings what all books mean
 * @param catalogue what ranges and rules know
 */
public record EveningAnswer(String session, int round, List<ListTurnout> lists, List<String> missing, List<String> promised,
        Map<Id, Set<Id>> shared, Evening evening, Meanings meanings, Catalogue catalogue) {
    public EveningAnswer {
        lists = List.copyOf(lists);
        missing = List.copyOf(missing);
        promised = List.copyOf(promised);
        shared = Map.copyOf(shared);
    }

    /** What people call who lends or borrows. */
    public String who(Id id) {
        return Lenders.club(id) ? "the club" : shared.containsKey(id) ? shared.get(id).stream()
                .map(owner -> ListTitle.player(owner, meanings)).collect(Collectors.joining(" and "))
                : ListTitle.player(id, meanings);
    }

    /**
     * Asks.
     *
     * @param session the name or the label of the session; empty for the only one of the round
     * @throws Unclear if there is no such round or session, or nobody plays
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static EveningAnswer of(Fielding fielding, String session, int round, Terms terms, CancelToken cancel)
            throws Unclear {
        Meanings meanings = fielding.meanings();
        for (Campaign campaign : meanings.campaigns()) {
            Optional<Round> found = campaign.rounds().stream().filter(one -> one.number() == round).findFirst();
            Optional<Session> evening = found.flatMap(one -> one.sessions().stream().filter(some ->
                    some.id().name().equalsIgnoreCase(session) || some.title().equalsIgnoreCase(session)).findFirst());
            if (evening.isPresent()) {
                return ask(fielding, campaign, found.get(), evening.get(), terms, cancel);
            }
        }
        List<String> sessions = meanings.campaigns().stream().flatMap(campaign -> campaign.rounds().stream())
                .filter(one -> one.number() == round).flatMap(one -> one.sessions().stream())
                .map(one -> one.id().name()).distinct().toList();
        throw new Unclear(sessions.isEmpty() ? "There is no round " + round + " with a session here."
                : "Round " + round + " has no session '" + session + "'; it has " + String.join(", ", sessions) + ".");
    }

    private static EveningAnswer ask(Fielding fielding, Campaign campaign, Round round, Session session, Terms terms,
            CancelToken cancel) throws Unclear {
        AsOf asOf = terms.week().isPresent() ? AsOf.week(terms.week().getAsInt())
                : session.date().map(AsOf::day).orElse(AsOf.NOW);
        List<String> missing = new ArrayList<>();
        List<ForceList> fielded = new ArrayList<>();
        for (Id player : players(round, session)) {
            Optional<ForceList> list = fielding.meanings().listsOf(player).stream().filter(one ->
                    one.round().isPresent() && one.round().getAsInt() == round.number()).findFirst();
            if (list.isEmpty() || !fielding.knows(list.get())) {
                missing.add(ListTitle.player(player, fielding.meanings())
                        + (list.isEmpty() ? " has no list for round " + round.number() : " has no shelf here"));
            } else {
                fielded.add(list.get());
            }
        }
        if (fielded.isEmpty()) {
            throw new Unclear("Nobody who plays in " + session.title() + " of round " + round.number()
                    + " has a list and a shelf here.");
        }
        List<ListTurnout> asked = new ArrayList<>();
        List<Seat> seats = new ArrayList<>();
        for (ForceList list : fielded) {
            ListTurnout one = fielding.ask(list, terms, asOf).answer();
            asked.add(one);
            seats.add(new Seat(list.player().orElseThrow(), list.id(), one.task().needs(), one.task().allowance()));
        }
        List<String> promised = new ArrayList<>();
        Inventory inventory = new Borrowed(fielding.catalogue(), fielding.meanings()).handedOver(fielded,
                fielding.inventory(Optional.of(campaign), asOf), promised);
        Lenders lenders = Lenders.of(inventory, seats.stream().map(Seat::player).toList());
        Evening evening = Lending.of(fielding.catalogue(), seats, lenders.all(), cancel);
        List<ListTurnout> lists = new ArrayList<>();
        for (ListTurnout one : asked) {
            Id player = one.list().player().orElseThrow();
            lists.add(one.with(evening.turnout(player).orElseThrow(), evening.supplies().get(player)));
        }
        return new EveningAnswer(session.title(), round.number(), lists, missing, promised, lenders.shared(), evening,
                fielding.meanings(), fielding.catalogue());
    }

    private static List<Id> players(Round round, Session session) {
        TreeSet<Id> players = new TreeSet<>();
        for (Deed deed : round.deeds()) {
            if (deed.doing() instanceof Meeting meeting && deed.clauses().session().equals(Optional.of(session.id()))) {
                players.add(deed.who());
                players.add(meeting.other());
            }
        }
        return List.copyOf(players);
    }
}
