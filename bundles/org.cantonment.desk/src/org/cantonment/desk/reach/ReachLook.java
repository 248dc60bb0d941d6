package org.cantonment.desk.reach;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.reach.ReachAnswer.Unclear;
import org.cantonment.desk.shopping.Errand;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.turnout.Row;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.stock.ledger.AsOf;

/**
 * What a window shows of a player's reach.
 *
 * @param formations with the columns of {@link ReachRows#COLUMNS}
 * @param boxes      with those of {@link ReachRows#BOX_COLUMNS}; empty if nothing is on sale, or as long as nobody looked
 */
public record ReachLook(Side formations, Optional<Side> boxes) {

    private static final String RECKONING = " Money is being reckoned\u2026";

    /** One side of it; the reply is for a chat. */
    public record Side(String heading, String reply, List<Row> rows) {
        public Side {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Looks at what is there now, by the newest prices: at pieces first, then into boxes, then for money.
     *
     * @param meanwhile is told what is known so far
     * @throws Unclear   if nothing can be told
     * @throws Cancelled if the token says so
     */
    public static ReachLook of(Meanings meanings, Player player, CancelToken cancel, Consumer<ReachLook> meanwhile)
            throws Unclear {
        Lookout lookout = Lookout.of(meanings, player, AsOf.NOW, Optional.empty());
        ReachAnswer pieces = lookout.pieces(cancel, Progress.SILENT);
        Side sofar = new Side(new ReachText(pieces).heading() + RECKONING, side(pieces).reply(), side(pieces).rows());
        meanwhile.accept(new ReachLook(sofar, Optional.empty()));
        try {
            Shops shops = Shops.of(meanings, Optional.of(player.id()), Errand.of(List.of(), Optional.empty()));
            BoxesAnswer boxes = lookout.boxes(pieces, shops, cancel, Progress.SILENT);
            meanwhile.accept(new ReachLook(sofar, Optional.of(side(boxes))));
            ReachAnswer money = lookout.money(pieces, shops, cancel, Progress.SILENT);
            cancel.check();
            return new ReachLook(side(money), Optional.of(side(boxes)));
        } catch (org.cantonment.desk.shopping.Unclear unclear) {
            return new ReachLook(side(pieces.withoutMoney(unclear.getMessage())), Optional.empty());
        }
    }

    private static Side side(ReachAnswer answer) {
        ReachText text = new ReachText(answer);
        return new Side(text.heading() + text.prices().map(" "::concat).orElse(""), text.reply(), ReachRows.of(answer));
    }

    private static Side side(BoxesAnswer answer) {
        BoxesText text = new BoxesText(answer);
        return new Side(text.heading(), text.reply(), ReachRows.of(answer));
    }
}
