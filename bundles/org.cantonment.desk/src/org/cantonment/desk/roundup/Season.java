package org.cantonment.desk.roundup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.NameOf;
import org.cantonment.domain.campaign.NamesBook;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.campaign.Session;
import org.cantonment.domain.campaign.Table;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;

/**
 * A campaign with all that is written about it in other books.
 *
 * @param campaign its own book
 * @param weeks    its weeks, from its own book and from others, by number
 * @param names    what people are called, by player
 */
public record Season(Campaign campaign, List<Week> weeks, Map<Id, String> names) {
    public Season {
        weeks = List.copyOf(weeks);
        names = Map.copyOf(names);
    }

    /**
     * Gathers a season.
     *
     * @param campaign its own book
     * @param weeks    books of weeks; those of another campaign are left out
     * @param names    books of names; those of another campaign are left out
     */
    public static Season of(Campaign campaign, List<Week> weeks, List<NamesBook> names) {
        List<Week> all = new ArrayList<>(campaign.weeks());
        for (Week week : weeks) {
            if (week.campaign().isEmpty() || week.campaign().get().equals(campaign.id())) {
                all.add(week);
            }
        }
        all.sort(Comparator.comparingInt(Week::number).thenComparing(Week::id));
        Map<Id, String> called = new HashMap<>();
        for (NamesBook book : names) {
            if (book.campaign().equals(campaign.id())) {
                for (NameOf name : book.names()) {
                    called.put(name.player(), name.name());
                }
            }
        }
        return new Season(campaign, all, called);
    }

    /** What a player is called: by the book of names, else by the label, else by the id's name. */
    public String name(Id player) {
        String written = names.getOrDefault(player, "");
        if (!written.isBlank()) {
            return written;
        }
        return find(campaign.players(), player).map(Titled::title).orElse(player.name());
    }

    /** The rounds by number. */
    public List<Round> rounds() {
        return campaign.rounds().stream().sorted(Comparator.comparingInt(Round::number)).toList();
    }

    /** The round of this number. */
    public Optional<Round> round(int number) {
        return campaign.rounds().stream().filter(r -> r.number() == number).findFirst();
    }

    /** The players who take part in a round by what stands on their cards. */
    public List<Player> playersIn(int round) {
        return campaign.players().stream()
                .filter(p -> p.joins().orElse(0) <= round && round <= p.leaves().orElse(Integer.MAX_VALUE))
                .toList();
    }

    /** What a table is called. */
    public String tableName(Id table) {
        return find(campaign.tables(), table).map(Table::title).orElse(table.name());
    }

    /** A session of a round; each round may have evenings of the same names. */
    public Optional<Session> session(int round, Id session) {
        return round(round).stream().flatMap(r -> r.sessions().stream())
                .filter(s -> s.id().equals(session) || s.id().name().equals(session.name())).findFirst();
    }

    private static <T extends Titled> Optional<T> find(List<T> all, Id id) {
        return all.stream().filter(t -> t.id().equals(id)).findFirst();
    }
}
