package org.cantonment.desk.reach;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.reach.ReachRow.Filled;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.ledger.AsOf;

/**
 * How far a player's shelf is from every formation of the player's side in every era, nearest first.
 *
 * @param player who
 * @param title  what people call the player
 * @param when   as of when the shelf was looked at
 * @param rows   one for each formation and era: those to be fielded now first, then by the pieces missing
 * @param shops  by what prices money was asked about; empty if it was not
 * @param noMoney why no money can be told though it was asked about, in a whole sentence
 */
public record ReachAnswer(Id player, String title, AsOf when, List<ReachRow> rows, Optional<Shops> shops,
        Optional<String> noMoney) {

    /** A player's reach cannot be told; the message is a whole sentence for a person. */
    public static final class Unclear extends Exception {
        private static final long serialVersionUID = 1L;

        Unclear(String message) {
            super(message);
        }
    }

    static final Comparator<ReachRow> NEAREST = Comparator
            .comparingInt((ReachRow row) -> lacking(row.least())).thenComparingInt(row -> lacking(row.most()));

    public ReachAnswer {
        rows = List.copyOf(rows);
    }

    /** The same where no money can be told. */
    public ReachAnswer withoutMoney(String why) {
        return new ReachAnswer(player, title, when, rows, shops, Optional.of(why));
    }

    /** How many of the formations can be fielded now. */
    public long now() {
        return rows.stream().filter(row -> lacking(row.least()) == 0).count();
    }

    private static int lacking(Optional<Filled> filled) {
        return filled.map(Filled::lacking).orElse(Integer.MAX_VALUE);
    }
}
