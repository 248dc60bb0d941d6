package org.cantonment.desk.shopping;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.MarketMaker;
import org.cantonment.buying.market.Rates;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Deed;
import org.cantonment.domain.campaign.Rate;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.range.Offer;
import org.cantonment.domain.range.Price;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.range.Seller;
import org.cantonment.domain.shelf.Shelf;
import org.joda.money.CurrencyUnit;

/**
 * What can be had.
 *
 * @param market   the boxes with their prices
 * @param ranges   where they stand
 * @param currency what is reckoned in
 * @param day      whose prices they are
 * @param why      why that day, in words
 */
public record Shops(Market market, List<Range> ranges, CurrencyUnit currency, LocalDate day, String why) {
    /** The code of what is said of each price that is left out. */
    static final String NO_RATE = "buying.no-rate";
    private static final int MOST_TOLD = 5;

    public Shops {
        ranges = List.copyOf(ranges);
    }

    /**
     * The market of a day.
     *
     * @param player whose campaign and shelf say the day and the currency where the errand does not; empty for nobody's
     * @throws Unclear if nothing says the day or the currency, or a seller's name means nobody
     */
    public static Shops of(Meanings meanings, Optional<Id> player, Errand errand) throws Unclear {
        if (meanings.ranges().stream().allMatch(range -> range.boxes().isEmpty())) {
            throw new Unclear("There is no range with boxes in this folder, so nothing can be bought.");
        }
        Optional<Campaign> campaign = player.flatMap(meanings::campaignOf).or(() -> meanings.campaigns().size() == 1
                ? Optional.of(meanings.campaigns().get(0)) : Optional.empty());
        List<Shelf> shelves = meanings.shelves().stream().filter(shelf -> player.isEmpty()
                || shelf.owners().contains(player.get())).toList();
        CurrencyUnit currency = currency(meanings, player.isPresent() ? shelves : List.of(),
                campaign, errand);
        Day day = day(meanings, campaign, shelves, errand);
        List<Rate> rates = campaign.map(Campaign::rates).orElseGet(() -> meanings.campaigns().stream()
                .flatMap(one -> one.rates().stream()).toList());
        Market market = MarketMaker.on(day.day(), meanings.ranges(), meanings.ruleSets(),
                Rates.on(rates, day.day(), currency));
        return new Shops(from(market, new Names(meanings).sellers(errand.from())), meanings.ranges(), currency, day.day(),
                day.why());
    }

    /** What has a price that no rate turns into the currency, in a sentence; empty if nothing has. */
    public Optional<String> leftOut() {
        List<String> titles = market.findings().stream().map(finding -> whatIsLeftOut(finding.at())).distinct().toList();
        return titles.isEmpty() ? Optional.empty() : Optional.of("Left out, for no rate says on " + day + " what the price is in "
                + currency + ": " + titles.stream().limit(MOST_TOLD).collect(Collectors.joining(", "))
                + (titles.size() > MOST_TOLD ? " and " + (titles.size() - MOST_TOLD) + " more" : "") + ".");
    }

    /** A price is left out for its box, an offer for its box and seller; without his postage all that a seller has. */
    private String whatIsLeftOut(Id line) {
        for (Seller seller : ranges.stream().flatMap(range -> range.sellers().stream()).toList()) {
            if (seller.postage().stream().anyMatch(one -> one.id().equals(line))) {
                return "all from " + seller.title();
            }
            Optional<Offer> offer = seller.offers().stream().filter(one -> one.id().equals(line)).findFirst();
            if (offer.isPresent()) {
                return market.catalogue().title(offer.get().box()) + " from " + seller.title();
            }
        }
        return market.catalogue().title(line.card());
    }

    private record Day(LocalDate day, String why) {
    }

    /** What a maker makes, whoever sells it, and what a seller sells, whoever made it. */
    private static Market from(Market market, Set<Id> whom) {
        return whom.isEmpty() ? market : new Market(market.catalogue(), market.wares().stream().filter(ware ->
                whom.contains(ware.seller()) || whom.contains(Id.of(ware.box().book()))).toList(), market.terms(),
                market.unpriced(), market.findings());
    }

    private static CurrencyUnit currency(Meanings meanings, List<Shelf> shelves, Optional<Campaign> campaign, Errand errand)
            throws Unclear {
        if (errand.currency().isPresent()) {
            return errand.currency().get();
        }
        Optional<CurrencyUnit> said = shelves.stream().map(Shelf::currency).flatMap(Optional::stream).findFirst()
                .or(() -> campaign.flatMap(Campaign::currency));
        if (said.isPresent()) {
            return said.get();
        }
        Set<CurrencyUnit> all = new TreeSet<>();
        for (Range range : meanings.ranges()) {
            range.boxes().forEach(box -> box.prices().forEach(price -> all.add(price.money().getCurrencyUnit())));
            range.sellers().forEach(seller -> {
                seller.offers().forEach(offer -> all.add(offer.money().getCurrencyUnit()));
                seller.lots().forEach(lot -> all.add(lot.money().getCurrencyUnit()));
            });
        }
        if (all.size() == 1) {
            return all.iterator().next();
        }
        throw new Unclear(all.isEmpty() ? "No box here has a price, and nothing says in which currency to reckon."
                : "Prices here are in " + all.stream().map(CurrencyUnit::getCode).collect(Collectors.joining(" and "))
                        + ", and neither shelf nor campaign says in which to reckon: say it with '--in'.");
    }

    private static Day day(Meanings meanings, Optional<Campaign> campaign, List<Shelf> shelves, Errand errand)
            throws Unclear {
        if (errand.on().isPresent()) {
            return new Day(errand.on().get(), "as asked");
        }
        Optional<LocalDate> booked = campaign.flatMap(one -> booked(meanings, one));
        Optional<LocalDate> begun = campaign.flatMap(Campaign::from);
        Optional<LocalDate> shelf = newest(shelves.stream().map(Shelf::on).flatMap(Optional::stream));
        Optional<LocalDate> priced = newest(meanings.ranges().stream().flatMap(range -> range.boxes().stream())
                .flatMap(box -> box.prices().stream()).flatMap(Shops::starts));
        return booked.map(day -> new Day(day, "the newest day booked"))
                .or(() -> begun.map(day -> new Day(day, "the day on which the campaign begins")))
                .or(() -> shelf.map(day -> new Day(day, "the newest day of a shelf")))
                .or(() -> priced.map(day -> new Day(day, "the day of the newest prices")))
                .orElseThrow(() -> new Unclear("Nothing here says what day it is: say it with '--on'."));
    }

    private static Stream<LocalDate> starts(Price price) {
        return price.when().conditions().stream().filter(Reach.class::isInstance).map(one -> ((Reach) one).from())
                .flatMap(Optional::stream).filter(OnDate.class::isInstance).map(one -> ((OnDate) one).date());
    }

    private static Optional<LocalDate> newest(Stream<LocalDate> days) {
        return days.max(Comparator.naturalOrder());
    }

    private static Optional<LocalDate> booked(Meanings meanings, Campaign campaign) {
        Stream<Week> weeks = Stream.concat(campaign.weeks().stream(), meanings.weeks().stream()
                .filter(week -> week.campaign().isEmpty() || week.campaign().get().equals(campaign.id())));
        List<LocalDate> days = new ArrayList<>();
        weeks.forEach(week -> week.deeds().forEach(deed -> days(deed, days)));
        return newest(days.stream());
    }

    private static void days(Deed deed, List<LocalDate> days) {
        deed.clauses().on().ifPresent(days::add);
        deed.inner().forEach(one -> days(one, days));
    }
}
