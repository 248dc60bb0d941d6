package org.cantonment.desk.reach;

import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Purchase;
import org.cantonment.desk.shopping.Cash;
import org.joda.money.Money;

/**
 * What it costs to make a formation fieldable.
 *
 * @param money     what the purchases cost, sending included; empty if none were found
 * @param purchases the purchases
 * @param boxes     the purchases in words
 * @param units     what then stands in the formation, in words, if it is not the filling that lacks the fewest pieces
 * @param proven    whether nothing costs less; without money, whether there is none that would do
 * @param why       why no money does it, in whole sentences
 */
public record Price(Optional<Money> money, List<Purchase> purchases, String boxes, Optional<String> units, boolean proven,
        List<String> why) {
    /** What stands in a table where there is nothing to be had. */
    public static final String NOT_SOLD = "not to be had";
    /** What stands there where the search was ended. */
    public static final String NOT_REACHED = "not looked at";

    public Price {
        purchases = List.copyOf(purchases);
        why = List.copyOf(why);
    }

    /** Nothing was found in time. */
    static Price unknown() {
        return new Price(Optional.empty(), List.of(), "", Optional.empty(), false, List.of());
    }

    /** "14.50 EUR", or "at most 14.50 EUR"; empty if there is none. */
    public Optional<String> amount() {
        return money.map(one -> (proven ? "" : "at most ") + Cash.text(one));
    }

    /** "14.50 EUR", or why there is no amount, in three words. */
    public String inShort() {
        return amount().orElse(proven ? NOT_SOLD : NOT_REACHED);
    }

    /** A sentence: "For 14.50 EUR: 1 Tread wagon." */
    public String words() {
        if (money.isEmpty()) {
            return proven ? "Not to be had: " + (why.isEmpty() ? "all that is there and on sale is not enough."
                    : String.join(" ", why)) : "What it costs was not looked at to the end.";
        }
        return (purchases.isEmpty() ? "For nothing: what is there has to be built and worked over"
                : "For " + amount().get() + ": " + boxes) + units.map("; filled with "::concat).orElse("") + '.';
    }
}
