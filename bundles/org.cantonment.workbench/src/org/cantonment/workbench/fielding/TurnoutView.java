package org.cantonment.workbench.fielding;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.shopping.Closing;
import org.cantonment.desk.turnout.Fielding;
import org.cantonment.desk.turnout.ListTurnout;
import org.cantonment.desk.turnout.TurnoutRows;
import org.cantonment.desk.turnout.TurnoutText;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.workbench.answers.BookAnswer;
import org.cantonment.workbench.answers.BookView;

/** Who stands where for the list that is edited, how true that is, and why what is short is short. */
public final class TurnoutView extends BookView {

    /** The id of the view. */
    public static final String ID = "org.cantonment.workbench.turnout";

    private static final String NOTHING = "Open a list to see who stands where.";


    /** For the platform. */
    public TurnoutView() {
        super(ID, Columns.of(TurnoutRows.COLUMNS, 30, 11, 60, 20, 14), NOTHING);
    }

    @Override
    protected BookAnswer answer(Meanings meanings, Object book, CancelToken cancel) {
        if (!(book instanceof ForceList list)) {
            return BookAnswer.nothing(NOTHING);
        }
        try {
            ListTurnout bare = new Fielding(meanings).of(list, Fielding.Terms.USUAL, cancel);
            ListTurnout turnout = bare.complete() ? bare
                    : bare.closedBy(Closing.of(meanings, bare, cancel, Progress.SILENT).words());
            TurnoutText text = new TurnoutText(turnout);
            return new BookAnswer(text.heading(), text.reply(), nodes(TurnoutRows.of(turnout)));
        } catch (Fielding.Unclear unclear) {
            return BookAnswer.nothing(unclear.getMessage());
        }
    }
}
