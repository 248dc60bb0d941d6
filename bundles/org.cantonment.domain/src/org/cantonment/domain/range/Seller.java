package org.cantonment.domain.range;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.joda.money.CurrencyUnit;

/** Who sells, on what terms. */
public record Seller(
        Id id, String label, Optional<CurrencyUnit> currency, List<Postage> postage, List<Discount> discounts,
        OptionalInt deliveryDays, List<Offer> offers, List<Lot> lots, List<String> notes) implements Titled {

    public Seller {
        postage = List.copyOf(postage);
        discounts = List.copyOf(discounts);
        offers = List.copyOf(offers);
        lots = List.copyOf(lots);
        notes = List.copyOf(notes);
    }
}
