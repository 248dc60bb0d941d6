package org.cantonment.workbench.fielding;

import java.util.Optional;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.reach.ReachAnswer;
import org.cantonment.desk.reach.ReachRows;
import org.cantonment.desk.reach.ReachText;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.workbench.answers.BookAnswer;
import org.cantonment.workbench.answers.BookView;

/** How far the player of the list or shelf that is edited is from every formation in every era. */
public final class ReachView extends BookView {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.reach";

    private static final String NOTHING = "Open a player's shelf, or one of his lists, to see what formations are within reach.";

    /** For the platform. */
    public ReachView() {
        super(ID, Columns.of(ReachRows.COLUMNS, 30, 20, 18, 18, 60), NOTHING);
    }

    @Override
    protected BookAnswer answer(Meanings meanings, Object book, CancelToken cancel) {
        Optional<Id> whose = book instanceof ForceList list ? list.player()
                : book instanceof Shelf shelf ? shelf.owners().stream().findFirst() : Optional.empty();
        Optional<Player> player = whose.flatMap(id -> meanings.campaignOf(id).stream()
                .flatMap(campaign -> campaign.players().stream()).filter(one -> one.id().equals(id)).findFirst());
        if (player.isEmpty()) {
            return BookAnswer.nothing(NOTHING);
        }
        try {
            ReachAnswer reach = ReachAnswer.now(meanings, player.get(), cancel);
            ReachText text = new ReachText(reach);
            return new BookAnswer(text.heading(), text.reply(), nodes(ReachRows.of(reach)));
        } catch (ReachAnswer.Unclear unclear) {
            return BookAnswer.nothing(unclear.getMessage());
        }
    }
}
