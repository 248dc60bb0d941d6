package org.cantonment.desk.reach;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.cantonment.buying.reach.Strength;
import org.cantonment.domain.common.Id;
import org.joda.money.Money;

/**
 * A box on sale that brings formations within reach by itself.
 *
 * @param price  the cheapest that anybody asks for one, sending left aside
 * @param seller who asks that
 * @param opened the formations that cannot be fielded now, and could be with one of this box
 */
public record BoxRow(Id box, String code, String title, Money price, String seller, List<Opened> opened) {

    /** A formation in an era, at one strength. */
    public record Opened(Id era, String eraTitle, Id formation, String title, Strength strength) {

        /** "at least" or "at most". */
        public String how() {
            return strength == Strength.LEAST ? "at least" : "at most";
        }
    }

    public BoxRow {
        opened = List.copyOf(opened);
    }

    /** "Signal mast (O-46)". */
    public String name() {
        return title.equals(code) ? title : title + " (" + code + ")";
    }

    /** What it opens, each formation with its eras: "Causey squadron, at least: The Reed Year, The Dyke War". */
    public List<String> words() {
        Map<String, String> eras = new LinkedHashMap<>();
        opened.forEach(one -> eras.merge(one.title() + ", " + one.how(), one.eraTitle(),
                (before, more) -> before + ", " + more));
        return eras.entrySet().stream().map(one -> one.getKey() + ": " + one.getValue()).toList();
    }

    /** Whether this one opens more for its money; of two that open as much for it, the one whose code comes first. */
    int compare(BoxRow other) {
        int more = Long.compare(Math.multiplyExact((long) other.opened.size(), price.getAmountMinorLong()),
                Math.multiplyExact((long) opened.size(), other.price.getAmountMinorLong()));
        int byCode = more == 0 ? code.compareTo(other.code) : more;
        return byCode == 0 ? box.compareTo(other.box) : byCode;
    }
}
