package org.cantonment.workbench.fielding;

import java.util.Optional;
import java.util.function.Consumer;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.reach.ReachAnswer;
import org.cantonment.desk.reach.ReachLook;
import org.cantonment.desk.reach.ReachRows;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.workbench.answers.BookAnswer;
import org.cantonment.workbench.answers.BookAnswer.Aside;
import org.cantonment.workbench.answers.BookView;

/**
 * How far the player of the list or shelf that is edited is from every formation in every era, in pieces and in money, and
 * what each box on sale would bring within reach. The pieces are there first; money and boxes come as they are reckoned.
 */
public final class ReachView extends BookView {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.reach";

    private static final String NOTHING = "Open a player's shelf, or one of his lists, to see what formations are within reach.";

    /** For the platform. */
    public ReachView() {
        super(ID, Columns.of(ReachRows.COLUMNS, 30, 20, 18, 18, 22, 60), NOTHING);
    }

    @Override
    protected String sideLabel(boolean aside) {
        return aside ? "Show &formations" : "Show &boxes";
    }

    @Override
    protected BookAnswer answer(Meanings meanings, Object book, CancelToken cancel) {
        return answer(meanings, book, cancel, sofar -> { });
    }

    @Override
    protected BookAnswer answer(Meanings meanings, Object book, CancelToken cancel, Consumer<BookAnswer> meanwhile) {
        Optional<Player> player = meanings.owner(book);
        if (player.isEmpty()) {
            return BookAnswer.nothing(NOTHING);
        }
        try {
            return answer(ReachLook.of(meanings, player.get(), cancel, sofar -> meanwhile.accept(answer(sofar))));
        } catch (ReachAnswer.Unclear unclear) {
            return BookAnswer.nothing(unclear.getMessage());
        }
    }

    private static BookAnswer answer(ReachLook look) {
        return new BookAnswer(look.formations().heading(), look.formations().reply(), nodes(look.formations().rows()),
                look.boxes().map(boxes -> new Aside(boxes.heading(), boxes.reply(), ReachRows.BOX_COLUMNS,
                        nodes(boxes.rows()))));
    }
}
