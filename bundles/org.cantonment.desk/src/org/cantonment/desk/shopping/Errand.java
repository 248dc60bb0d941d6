package org.cantonment.desk.shopping;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.joda.money.CurrencyUnit;

/**
 * What somebody wants, in the words that were typed.
 *
 * @param lists    target lists in order of priority: rounds, spans of rounds, names of lists or their files; empty for all
 *                 that are still to be played
 * @param also     things wanted beside the lists: a box's extra, a piece, each with a number before it if it is more than one
 * @param from     makers and sellers to buy from; empty for all
 * @param on       the day whose prices hold; empty for the newest day that the books know of
 * @param currency what to reckon in; empty for that of the shelf, else the only one there is
 */
public record Errand(List<String> lists, List<String> also, List<String> from, Optional<LocalDate> on,
        Optional<CurrencyUnit> currency) {

    /** These lists by the prices of this day, from everybody. */
    public static Errand of(List<String> lists, Optional<LocalDate> on) {
        return new Errand(lists, List.of(), List.of(), on, Optional.empty());
    }

    public Errand {
        lists = List.copyOf(lists);
        also = List.copyOf(also);
        from = List.copyOf(from);
    }
}
