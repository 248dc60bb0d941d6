package org.cantonment.desk.reach;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;

/**
 * One formation in one era.
 *
 * @param least how far the shelf is from it with the fewest units at their least strength; empty if no unit may stand in a
 *              billet that must be filled
 * @param most  how far from it with the most units at their greatest strength
 */
public record ReachRow(Id era, String eraTitle, Id formation, String title, Optional<Filled> least, Optional<Filled> most) {

    /** So many pieces of any of these types. */
    public record Missing(int count, List<Id> anyOf, String words) {
        public Missing {
            anyOf = List.copyOf(anyOf);
        }
    }

    /**
     * The filling that is nearest.
     *
     * @param units   what stands in it, in words
     * @param needed  how many pieces that takes
     * @param missing which pieces are missing; empty if it can be fielded now
     * @param proven  whether no filling is nearer
     * @param price   the least money that makes the formation fieldable, by whatever filling; empty if it can be fielded now,
     *                or where money was not asked about
     */
    public record Filled(String units, int needed, List<Missing> missing, boolean proven, Optional<Price> price) {
        public Filled {
            missing = List.copyOf(missing);
        }

        /** How many pieces away it is. */
        public int lacking() {
            return missing.stream().mapToInt(Missing::count).sum();
        }

        /** The same with its price. */
        Filled at(Price what) {
            return new Filled(units, needed, missing, proven, Optional.of(what));
        }

        /** "1 Gun wagon, 2 Lock warden or Reeve". */
        public String which() {
            return missing.stream().map(one -> one.count() + " " + one.words()).collect(Collectors.joining(", "));
        }

        /** "now", or "2 pieces away". */
        public String away() {
            int lacking = lacking();
            return (lacking == 0 ? "now" : lacking == 1 ? "1 piece away" : lacking + " pieces away")
                    + (proven || lacking == 0 ? "" : " at the most");
        }

        /** "now", or "2 pieces or 14.50 EUR away". */
        public String awayWithMoney() {
            Optional<String> money = price.flatMap(Price::amount);
            return money.isEmpty() || lacking() == 0 ? away() : away().replace(" away", " or " + money.get() + " away");
        }
    }

    /** The same with other answers. */
    ReachRow with(Optional<Filled> newLeast, Optional<Filled> newMost) {
        return new ReachRow(era, eraTitle, formation, title, newLeast, newMost);
    }
}
