package org.cantonment.desk.reach;

import java.util.List;

import org.cantonment.desk.shopping.Shops;
import org.cantonment.domain.common.Id;
import org.cantonment.stock.ledger.AsOf;

/**
 * What each box on sale would bring within a player's reach by itself.
 *
 * @param rows  the boxes that open anything, those first that open most for their money
 * @param boxes how many boxes were looked at
 */
public record BoxesAnswer(Id player, String title, AsOf when, Shops shops, List<BoxRow> rows, int boxes) {

    public BoxesAnswer {
        rows = List.copyOf(rows);
    }
}
