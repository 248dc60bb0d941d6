package org.cantonment.buying.market;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Lot;
import org.cantonment.domain.range.Offer;
import org.cantonment.domain.range.Postage;
import org.cantonment.domain.range.Price;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.range.Seller;
import org.cantonment.domain.range.Stock;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.stock.supply.Supply;
import org.joda.money.Money;

/** Reads ranges for one day. */
public final class MarketMaker {

    /** More than anybody buys of one thing. */
    static final int ENDLESS = 10_000;

    private final Collection<Range> ranges;
    private final LocalDate day;
    private final Rates rates;
    private final Loads loads;
    private final List<Ware> wares = new ArrayList<>();
    private final Map<Id, Terms> terms = new TreeMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private MarketMaker(Collection<Range> ranges, Collection<RuleSet> books, LocalDate day, Rates rates) {
        this.ranges = ranges;
        this.day = day;
        this.rates = rates;
        loads = new Loads(Loads.catalogue(ranges, books), day);
    }

    /** What can be had on a day, reckoned in the currency of the rates. */
    public static Market on(LocalDate day, Collection<Range> ranges, Collection<RuleSet> books, Rates rates) {
        return new MarketMaker(ranges, books, day, rates).make();
    }

    private Market make() {
        Map<Id, Box> boxes = new TreeMap<>();
        for (Range range : ranges) {
            range.boxes().forEach(box -> boxes.put(box.id(), box));
            range.boxes().forEach(box -> ofMaker(range, box));
            terms.put(range.id(), new Terms(range.id(), range.title(), Optional.empty(), Optional.empty(), List.of(),
                    OptionalInt.empty()));
        }
        for (Range range : ranges) {
            range.sellers().forEach(seller -> ofSeller(seller, boxes));
        }
        wares.sort(Comparator.comparing(Ware::code).thenComparing(Ware::box).thenComparing(Ware::seller)
                .thenComparing(Ware::line));
        Map<Id, Supply> unpriced = new TreeMap<>();
        Set<Id> priced = new HashSet<>();
        wares.forEach(ware -> priced.add(ware.box()));
        boxes.keySet().stream().filter(id -> !priced.contains(id)).forEach(id -> unpriced.put(id, loads.of(id, 1)));
        return new Market(loads.catalogue(), wares, terms, unpriced, findings);
    }

    private boolean holds(Validity when) {
        return when.covers(Occasion.on(day), EraOrder.NONE);
    }

    private void ofMaker(Range range, Box box) {
        boolean sold = box.sold().isEmpty() || box.sold().stream().anyMatch(this::holds);
        Optional<Price> price = box.prices().stream().filter(one -> holds(one.when()))
                .max(Comparator.comparing((Price one) -> start(one.when())).thenComparing(Price::id));
        if (sold && price.isPresent()) {
            add(price.get().id(), box.id(), 1, box.title(), code(box), range.id(), price.get().money(), left(box));
        }
    }

    /** The day from which something holds, for which of two is the newer. */
    private static LocalDate start(Validity when) {
        return when.conditions().stream().filter(Reach.class::isInstance).map(one -> ((Reach) one).from())
                .flatMap(Optional::stream).filter(OnDate.class::isInstance).map(one -> ((OnDate) one).date())
                .max(Comparator.naturalOrder()).orElse(LocalDate.MIN);
    }

    private int left(Box box) {
        return box.stock().stream().filter(one -> one.on().map(on -> !on.isAfter(day)).orElse(true))
                .max(Comparator.comparing((Stock one) -> one.on().orElse(LocalDate.MIN)).thenComparing(Stock::id))
                .map(Stock::count).orElse(ENDLESS);
    }

    private static String code(Box box) {
        return box.codes().isEmpty() ? box.id().name() : box.codes().get(0);
    }

    private void ofSeller(Seller seller, Map<Id, Box> boxes) {
        int before = findings.size();
        Optional<Postage> postage = seller.postage().stream().findFirst();
        Optional<Money> sending = postage.flatMap(one -> turn(one.id(), one.money()));
        terms.put(seller.id(), new Terms(seller.id(), seller.title(), sending.filter(Money::isPositive),
                postage.flatMap(Postage::freeFrom), seller.discounts().stream().filter(one -> holds(one.when()))
                        .map(one -> new Terms.Reduction(one.id(), one.percent(), one.from())).toList(),
                seller.deliveryDays()));
        if (findings.size() > before) {
            return;
        }
        for (Offer offer : seller.offers()) {
            Box box = boxes.get(offer.box());
            if (box != null && holds(offer.when())) {
                int count = offer.count().orElse(offer.each() ? ENDLESS : 1);
                add(offer.id(), box.id(), offer.each() ? 1 : count, box.title(), code(box), seller.id(), offer.money(),
                        offer.each() ? count : 1);
            }
        }
        for (Lot lot : seller.lots()) {
            if (holds(lot.when())) {
                add(lot.id(), lot.id(), 1, lot.title(), lot.id().name(), seller.id(), lot.money(), 1);
            }
        }
    }

    private void add(Id line, Id box, int boxes, String title, String code, Id seller, Money price, int most) {
        Optional<Money> cost = turn(line, price);
        if (cost.isPresent() && boxes > 0 && most > 0) {
            wares.add(new Ware(line, box, boxes, title, code, seller, price, cost.get(), most, loads.of(box, boxes),
                    loads.pieces(box, boxes)));
        }
    }

    private Optional<Money> turn(Id line, Money money) {
        Optional<Money> turned = rates.turn(money);
        if (turned.isEmpty()) {
            findings.add(Finding.of("buying.no-rate", Severity.CAUTION, line, "This is in "
                    + money.getCurrencyUnit() + ", and no rate says on " + day + " what that is in " + rates.account()
                    + "; it is left out."));
        }
        return turned;
    }
}
