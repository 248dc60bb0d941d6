package org.cantonment.desk.judging;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Meeting;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.Session;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.ledger.Ledger;
import org.cantonment.stock.ledger.RollBook;

/** The two books of a campaign, and the day on which a list is played. */
public final class Stores {
    private Stores() {
    }

    /** Where everything lies. */
    public static Ledger of(Meanings meanings, Catalogue catalogue, Optional<Campaign> campaign) {
        return Ledger.of(catalogue, meanings.shelves(), campaign, weeks(meanings, campaign));
    }

    /** What the armies have lost. */
    public static RollBook roll(Meanings meanings, Optional<Campaign> campaign) {
        return RollBook.of(campaign, weeks(meanings, campaign));
    }

    private static List<Week> weeks(Meanings meanings, Optional<Campaign> campaign) {
        return campaign.map(one -> meanings.weeks().stream().filter(week ->
                week.campaign().equals(Optional.of(one.id()))).toList()).orElse(List.of());
    }

    /**
     * When a list is looked at: after the week that is asked for; else when its round is played, as it is known now; else now.
     */
    public static AsOf when(ForceList list, Optional<Campaign> campaign, OptionalInt week) {
        if (week.isPresent()) {
            return AsOf.week(week.getAsInt());
        }
        return round(list, campaign).flatMap(round -> day(round, list.player())).map(AsOf::day).orElse(AsOf.NOW);
    }

    /** The round of a list. */
    public static Optional<Round> round(ForceList list, Optional<Campaign> campaign) {
        return campaign.flatMap(one -> one.rounds().stream().filter(round -> list.round().isPresent()
                && round.number() == list.round().getAsInt()).findFirst());
    }

    /** The evening on which a player plays, else the first day of the round. */
    private static Optional<LocalDate> day(Round round, Optional<Id> player) {
        Optional<LocalDate> evening = round.deeds().stream().filter(deed -> deed.doing() instanceof Meeting meeting
                && player.isPresent() && (deed.who().equals(player.get()) || meeting.other().equals(player.get())))
                .map(deed -> deed.clauses().session()).flatMap(Optional::stream).findFirst()
                .flatMap(session -> round.sessions().stream().filter(one -> one.id().equals(session)).findFirst())
                .flatMap(Session::date);
        return evening.or(() -> round.play().map(play -> play.from()));
    }
}
