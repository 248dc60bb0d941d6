package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Discount;
import org.cantonment.domain.range.Lot;
import org.cantonment.domain.range.Offer;
import org.cantonment.domain.range.Postage;
import org.cantonment.domain.range.Seller;
import org.cantonment.model.book.Line;
import org.cantonment.model.range.Delivery;
import org.cantonment.model.range.RangePackage;
import org.cantonment.notation.reading.Under.Taken;
import org.joda.money.Money;

/** Reads one seller and what is offered. */
final class SellerReader {

    private final Reading reading;
    private final Phrases phrases;
    private final org.cantonment.model.range.Seller seller;
    private final List<Postage> postage = new ArrayList<>();
    private final List<Discount> discounts = new ArrayList<>();
    private final Said<Integer> days;
    private final List<Offer> offers = new ArrayList<>();
    private final List<Lot> lots = new ArrayList<>();

    /** @param book the book's phrases; a seller may trade in a currency of another land */
    SellerReader(Reading reading, Phrases book, org.cantonment.model.range.Seller seller) {
        this.reading = reading;
        this.seller = seller;
        phrases = book.in(seller, RangePackage.Literals.SELLER__CURRENCY, seller.getCurrency());
        days = new Said<>(reading);
    }

    Seller read() {
        Id id = reading.id(seller);
        Under.each(reading, id, seller.getLines(), Under.words("seller", seller), this::take);
        return new Seller(id, Reading.label(seller), phrases.currency(), postage, discounts, Said.number(days), offers,
                lots, Reading.notes(seller.getLines()));
    }

    private Taken take(Line line, Id id) {
        if (line instanceof org.cantonment.model.range.Lot lot) {
            lot(lot).ifPresent(lots::add);
            return Taken.WITH_LINES;
        }
        if (line instanceof org.cantonment.model.range.Postage fee) {
            Optional<Money> freeFrom = phrases.money(fee.getThreshold());
            phrases.money(fee.getMoney()).ifPresent(money -> postage.add(new Postage(id, money, freeFrom)));
        } else if (line instanceof org.cantonment.model.range.Discount discount) {
            discount(discount, id).ifPresent(discounts::add);
        } else if (line instanceof Delivery delivery) {
            days.say(delivery, Optional.ofNullable(delivery.getDays()));
        } else if (line instanceof org.cantonment.model.range.Offer offer) {
            offer(offer, id).ifPresent(offers::add);
        } else {
            return Taken.NO;
        }
        return Taken.ALONE;
    }

    /** A threshold that could not be read would give the discount to all, so the line is left out. */
    private Optional<Discount> discount(org.cantonment.model.range.Discount discount, Id id) {
        Optional<Money> from = phrases.money(discount.getThreshold());
        boolean lost = discount.getThreshold() != null && from.isEmpty();
        if (lost || discount.getPercent() == null) {
            return Optional.empty();
        }
        int percent = reading.percent(discount, RangePackage.Literals.DISCOUNT__PERCENT, discount.getPercent());
        return Optional.of(new Discount(id, percent, from, phrases.when(discount.getWhen())));
    }

    private Optional<Offer> offer(org.cantonment.model.range.Offer offer, Id id) {
        Optional<Money> money = phrases.money(offer.getMoney());
        Optional<Id> box = Reading.ref(offer.getBox());
        return money.isEmpty() || box.isEmpty() ? Optional.empty()
                : Optional.of(new Offer(id, Reading.optional(offer.getCount()), box.get(), money.get(), offer.isEach(),
                        phrases.when(offer.getWhen())));
    }

    private Optional<Lot> lot(org.cantonment.model.range.Lot lot) {
        Id id = reading.id(lot);
        BoxReader.Inside inside = new BoxReader.Inside();
        BoxReader boxes = new BoxReader(reading, phrases, new RangeCircles(reading));
        Under.each(reading, id, lot.getLines(), Under.words("lot", lot),
                (line, at) -> boxes.inside(inside, null, line, at));
        return phrases.money(lot.getMoney()).map(money -> new Lot(id, Reading.label(lot), money,
                phrases.when(lot.getWhen()), inside.contents(), inside.caps(), Reading.notes(lot.getLines())));
    }
}
