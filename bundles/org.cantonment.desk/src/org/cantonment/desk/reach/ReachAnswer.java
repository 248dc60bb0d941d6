package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.cantonment.desk.eras.Cupboard;
import org.cantonment.desk.judging.Cases;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.reach.ReachRow.Filled;
import org.cantonment.desk.reach.ReachRow.Missing;
import org.cantonment.desk.judging.Stores;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.reach.FormationReach;
import org.cantonment.stock.reach.Near;
import org.cantonment.stock.reach.Reach;
import org.cantonment.stock.reach.Shape;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Depot;

/**
 * How far a player's shelf is from every formation of the player's side in every era, nearest first.
 *
 * @param player who
 * @param title  what people call the player
 * @param when   as of when the shelf was looked at
 * @param rows   one for each formation and era: those to be fielded now first, then by the pieces missing
 */
public record ReachAnswer(Id player, String title, AsOf when, List<ReachRow> rows) {

    /** A player's reach cannot be told; the message is a whole sentence for a person. */
    public static final class Unclear extends Exception {
        private static final long serialVersionUID = 1L;

        Unclear(String message) {
            super(message);
        }
    }

    /** So many fillings of a formation are looked at in all its shapes together, */
    private static final int BRANCHES = 400;
    /** and of each shape so many at the least. */
    private static final int LEAST = 50;

    private static final Comparator<ReachRow> NEAREST = Comparator
            .comparingInt((ReachRow row) -> lacking(row.least())).thenComparingInt(row -> lacking(row.most()));

    public ReachAnswer {
        rows = List.copyOf(rows);
    }

    /** How many of the formations can be fielded now. */
    public long now() {
        return rows.stream().filter(row -> lacking(row.least()) == 0).count();
    }

    private static int lacking(Optional<Filled> filled) {
        return filled.map(Filled::lacking).orElse(Integer.MAX_VALUE);
    }

    /** The player that a word means: by id or by what people call him. */
    public static Optional<Player> player(Meanings meanings, String word) {
        return meanings.campaigns().stream().flatMap(campaign -> campaign.players().stream())
                .filter(player -> player.id().name().equalsIgnoreCase(word)
                        || ListTitle.player(player.id(), meanings).equalsIgnoreCase(word)).findFirst();
    }

    /** What is within reach now, in all eras. */
    public static ReachAnswer now(Meanings meanings, Player player, CancelToken cancel) throws Unclear {
        return of(meanings, player, AsOf.NOW, Optional.empty(), cancel, Progress.SILENT);
    }

    /**
     * Asks.
     *
     * @param only     this era; empty for all
     * @param cancel   asked often
     * @param progress told of each era
     * @throws Unclear   if the player has no shelf, or nobody says which rules are played, or they know no such era
     * @throws Cancelled if the token says so
     */
    public static ReachAnswer of(Meanings meanings, Player player, AsOf when, Optional<String> only, CancelToken cancel,
            Progress progress) throws Unclear {
        String title = ListTitle.player(player.id(), meanings);
        if (meanings.shelves().stream().noneMatch(shelf -> shelf.owners().contains(player.id()))) {
            throw new Unclear(title + " has no shelf here, so nothing is known of what is owned.");
        }
        Optional<Campaign> campaign = meanings.campaignOf(player.id());
        List<RuleSet> books = meanings.closure(campaign.map(Campaign::plays).orElse(List.of()));
        List<Era> eras = eras(books, only);
        Catalogue catalogue = Catalogue.of(meanings.ranges(), meanings.ruleSets());
        Supply supply = Stores.of(meanings, catalogue, campaign).at(when).of(player.id());
        Cupboard cupboard = new Cupboard(catalogue, supply, books, campaign);
        Cases cases = Cases.of(meanings);
        Set<Id> sides = player.side().map(Set::of).orElse(Set.of());
        List<ReachRow> rows = new ArrayList<>();
        for (Era era : eras) {
            progress.at(eras.indexOf(era), eras.size(), "Looking into eras:");
            Ruling ruling = cases.ruling(books, Occasion.in(era.id()));
            Depot depot = Depot.of(catalogue, supply, cupboard.allowance(ruling));
            Shapes shapes = new Shapes(ruling);
            for (FormationView formation : shapes.formations(sides)) {
                cancel.check();
                List<Shape> ways = shapes.of(formation, sides);
                rows.add(row(era, formation, Reach.of(depot, ways, Math.max(LEAST, BRANCHES / Math.max(1, ways.size())),
                        cancel), ruling, catalogue));
            }
        }
        rows.sort(NEAREST);
        return new ReachAnswer(player.id(), title, when, rows);
    }

    private static List<Era> eras(List<RuleSet> books, Optional<String> only) throws Unclear {
        List<Era> eras = books.stream().flatMap(book -> book.eras().stream()).toList();
        if (eras.isEmpty()) {
            throw new Unclear(books.isEmpty() ? "Nobody says which rules this player's campaign plays: write 'plays' and the"
                    + " book." : "The rules here know no eras.");
        }
        List<Era> some = eras.stream().filter(era -> only.isEmpty() || era.id().name().equalsIgnoreCase(only.get())
                || era.title().equalsIgnoreCase(only.get())).toList();
        if (some.isEmpty()) {
            throw new Unclear("There is no era '" + only.orElse("") + "'; there are "
                    + eras.stream().map(era -> era.id().name()).collect(Collectors.joining(", ")) + ".");
        }
        return some;
    }

    /** Of several ways to fill the billets the nearest, with the fewest units and with the most. */
    private static ReachRow row(Era era, FormationView formation, List<FormationReach> ways, Ruling ruling,
            Catalogue catalogue) {
        Optional<Near> least = ways.stream().map(FormationReach::least).flatMap(Optional::stream)
                .min(Comparator.comparingInt(Near::lacking));
        Optional<Near> most = ways.stream().map(FormationReach::most).flatMap(Optional::stream)
                .min(Comparator.comparingInt(Near::lacking));
        return new ReachRow(era.id(), era.title(), formation.id(), formation.title(),
                least.map(near -> filled(near, ruling, catalogue)), most.map(near -> filled(near, ruling, catalogue)));
    }

    private static Filled filled(Near near, Ruling ruling, Catalogue catalogue) {
        Map<List<Id>, Integer> missing = new LinkedHashMap<>();
        Map<Requirement, Integer> seen = new LinkedHashMap<>();
        near.turnout().postings().forEach(posting -> seen.merge(posting.need(), posting.count(), Integer::sum));
        near.turnout().reasons().stream().flatMap(reason -> reason.needs().stream()).distinct().forEach(need -> {
            int lacking = need.count() - seen.getOrDefault(need, 0);
            if (lacking > 0) {
                missing.merge(need.anyOf(), lacking, Integer::sum);
            }
        });
        List<Missing> all = new ArrayList<>();
        missing.forEach((anyOf, count) -> all.add(new Missing(count, anyOf,
                anyOf.stream().map(catalogue::title).collect(Collectors.joining(" or ")))));
        return new Filled(near.units().stream().map(unit -> fielded(unit, ruling)).collect(Collectors.joining(", ")),
                near.turnout().needed(), all, near.proven());
    }

    private static String fielded(Fielded fielded, Ruling ruling) {
        return (fielded.count() == 1 ? "" : fielded.count() + " ") + ruling.title(fielded.unit())
                + (fielded.strength() == 1 ? "" : " of " + fielded.strength());
    }
}
