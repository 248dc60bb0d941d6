package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.cantonment.buying.market.Ware;
import org.cantonment.buying.reach.Asked;
import org.cantonment.buying.reach.Cost;
import org.cantonment.buying.reach.Costs;
import org.cantonment.buying.reach.Filling;
import org.cantonment.buying.reach.Near;
import org.cantonment.buying.reach.Reach;
import org.cantonment.buying.reach.Strength;
import org.cantonment.desk.eras.Cupboard;
import org.cantonment.desk.judging.Cases;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.reach.BoxRow.Opened;
import org.cantonment.desk.reach.ReachAnswer.Unclear;
import org.cantonment.desk.reach.ReachRow.Filled;
import org.cantonment.desk.reach.ReachRow.Missing;
import org.cantonment.desk.shopping.PlanText;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.judging.Stores;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;

/**
 * Looks how far a player's shelf is from the formations of the player's side: in pieces, then in money. Each look may be
 * taken by itself; one lookout is for one thread at a time.
 */
public final class Lookout {

    /** What holds in an era. */
    private record Times(Era era, Ruling ruling, Formations formations, Allowance allowance) {

        Asked asked(Id formation, Strength strength) {
            return new Asked(formations.known(), formation, strength, allowance);
        }
    }

    private final Id player;
    private final String title;
    private final AsOf when;
    private final Catalogue catalogue;
    private final Supply supply;
    private final List<Times> eras;
    private final Reach reach;
    private final Map<List<Object>, Filling> nearest = new HashMap<>();

    private Lookout(Player player, String title, AsOf when, Catalogue catalogue, Supply supply, List<Times> eras) {
        this.player = player.id();
        this.title = title;
        this.when = when;
        this.catalogue = catalogue;
        this.supply = supply;
        this.eras = eras;
        this.reach = new Reach(catalogue, supply);
    }

    /**
     * Makes ready.
     *
     * @param only this era; empty for all
     * @throws Unclear if the player has no shelf, or nobody says which rules are played, or they know no such era
     */
    public static Lookout of(Meanings meanings, Player player, AsOf when, Optional<String> only) throws Unclear {
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
        List<Times> times = new ArrayList<>();
        for (Era era : eras) {
            Ruling ruling = cases.ruling(books, Occasion.in(era.id()));
            times.add(new Times(era, ruling, new Formations(ruling, sides), cupboard.allowance(ruling)));
        }
        return new Lookout(player, title, when, catalogue, supply, times);
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

    /**
     * How many pieces away everything is.
     *
     * @throws Cancelled if the token says so
     */
    public ReachAnswer pieces(CancelToken cancel, Progress progress) {
        List<ReachRow> rows = new ArrayList<>();
        for (Times times : eras) {
            progress.at(eras.indexOf(times), eras.size(), "Looking into eras:");
            for (FormationView view : times.formations().views()) {
                rows.add(new ReachRow(times.era().id(), times.era().title(), view.id(), view.title(),
                        pieces(times, view.id(), Strength.LEAST, cancel), pieces(times, view.id(), Strength.MOST, cancel)));
            }
        }
        rows.sort(ReachAnswer.NEAREST);
        return new ReachAnswer(player, title, when, rows, Optional.empty(), Optional.empty());
    }

    private Optional<Filled> pieces(Times times, Id formation, Strength strength, CancelToken cancel) {
        return reach.near(times.asked(formation, strength), cancel).map(near -> {
            Filled filled = new Filled(words(near.filling(), times.ruling()), near.needed(), missing(near), near.proven(),
                    Optional.empty());
            nearest.put(List.of(times.era().id(), formation, strength), near.filling());
            return filled;
        });
    }

    private List<Missing> missing(Near near) {
        return near.missing().stream().map(one -> new Missing(one.count(), one.anyOf(),
                one.anyOf().stream().map(catalogue::title).collect(Collectors.joining(" or ")))).toList();
    }

    private static String words(Filling filling, Ruling ruling) {
        return filling.units().stream().map(unit -> fielded(unit, ruling)).collect(Collectors.joining(", "));
    }

    private static String fielded(Fielded fielded, Ruling ruling) {
        return (fielded.count() == 1 ? "" : fielded.count() + " ") + ruling.title(fielded.unit())
                + (fielded.strength() == 1 ? "" : " of " + fielded.strength());
    }

    /**
     * The same with how much money away everything is. What is not looked at when the token says stop has no price.
     *
     * @param pieces an answer of this lookout
     */
    public ReachAnswer money(ReachAnswer pieces, Shops shops, CancelToken cancel, Progress progress) {
        Costs costs = new Costs(shops.market(), shops.currency(), supply);
        PlanText text = new PlanText(shops.market().catalogue());
        List<ReachRow> rows = new ArrayList<>();
        for (ReachRow row : pieces.rows()) {
            progress.at(rows.size(), pieces.rows().size(), "Looking what it costs:");
            Times times = times(row);
            rows.add(row.with(row.least().map(filled -> money(filled, times, row, Strength.LEAST, costs, text, cancel)),
                    row.most().map(filled -> money(filled, times, row, Strength.MOST, costs, text, cancel))));
        }
        return new ReachAnswer(player, title, when, rows, Optional.of(shops), Optional.empty());
    }

    private Filled money(Filled filled, Times times, ReachRow row, Strength strength, Costs costs, PlanText text,
            CancelToken cancel) {
        if (filled.lacking() == 0) {
            return filled;
        }
        if (cancel.cancelled()) {
            return filled.at(Price.unknown());
        }
        Cost cost = costs.cost(times.asked(row.formation(), strength),
                nearest.get(List.of(row.era(), row.formation(), strength)), cancel);
        return filled.at(new Price(cost.total(), cost.purchases(), text.boxes(cost.purchases()),
                cost.filling().map(filling -> words(filling, times.ruling())).filter(words -> !words.equals(filled.units())),
                cost.proven(), cost.total().isEmpty() && cost.proven() ? why(cost, filled, times, costs) : List.of()));
    }

    /** What of it nobody sells, else what the planner says. */
    private static List<String> why(Cost cost, Filled filled, Times times, Costs costs) {
        List<String> unsold = filled.missing().stream().filter(one -> !costs.sold(one.anyOf(), times.allowance()))
                .map(Missing::words).toList();
        return unsold.isEmpty() ? cost.why().stream().filter(one -> !one.code().equals("buying.no-rate"))
                .map(Finding::message).distinct().toList()
                : List.of("nobody sells " + String.join(", ", unsold) + ", or what may stand for it.");
    }

    /**
     * What each box on sale brings within reach by itself.
     *
     * @param pieces an answer of this lookout
     * @throws Cancelled if the token says so
     */
    public BoxesAnswer boxes(ReachAnswer pieces, Shops shops, CancelToken cancel, Progress progress) {
        List<Missed> missed = new ArrayList<>();
        for (ReachRow row : pieces.rows()) {
            row.least().ifPresent(filled -> miss(row, filled, Strength.LEAST, missed));
            row.most().filter(most -> !most.equals(row.least().orElse(null)))
                    .ifPresent(filled -> miss(row, filled, Strength.MOST, missed));
        }
        missed.sort(Comparator.comparingInt(one -> order(one.opened().era())));
        List<BoxRow> rows = new ArrayList<>();
        List<Ware> wares = shops.market().byBox().keySet().stream().map(shops.market()::cheapest).flatMap(Optional::stream)
                .toList();
        for (int i = 0; i < wares.size(); i++) {
            progress.at(i, wares.size(), "Looking into boxes:");
            Ware ware = wares.get(i);
            List<Opened> opened = missed.stream().filter(one -> reach.opens(one.asked(), one.lacking(), ware.load(), cancel))
                    .map(Missed::opened).toList();
            if (!opened.isEmpty()) {
                rows.add(new BoxRow(ware.box(), ware.code(), ware.title(), ware.cost(),
                        shops.market().terms().get(ware.seller()).title(), opened));
            }
        }
        rows.sort(BoxRow::compare);
        return new BoxesAnswer(player, title, when, shops, rows, wares.size());
    }

    /** What cannot be fielded now. */
    private record Missed(Opened opened, Asked asked, int lacking) {
    }

    private void miss(ReachRow row, Filled filled, Strength strength, List<Missed> missed) {
        if (filled.lacking() > 0) {
            missed.add(new Missed(new Opened(row.era(), row.eraTitle(), row.formation(), row.title(), strength),
                    times(row).asked(row.formation(), strength), filled.lacking()));
        }
    }

    private int order(Id era) {
        return eras.stream().map(one -> one.era().id()).toList().indexOf(era);
    }

    private Times times(ReachRow row) {
        return eras.get(order(row.era()));
    }
}
