package org.cantonment.buying.reach;

import java.util.List;

import org.cantonment.buying.solve.Column;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Programme;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;

/**
 * In what order a search settles things. For pieces it is best to settle first what stands in the formation, for money what is
 * bought and built; where a search does not come to an end in the one order, it may in the other.
 */
enum Trying {
    WHAT_STANDS_FIRST(0), WHAT_STANDS_LATE(2);

    /** A search that takes more work than this is given up, and the best is told that was found. */
    private static final Limits LIMITS = new Limits(60_000, 50_000);

    private final int rank;

    Trying(int rank) {
        this.rank = rank;
    }

    /** The rank of the columns for what stands. */
    int rank() {
        return rank;
    }

    private Trying other() {
        return this == WHAT_STANDS_FIRST ? WHAT_STANDS_LATE : WHAT_STANDS_FIRST;
    }

    /** What is best; where it is not proven, the better of what both orders found. */
    Outcome solve(Programme programme, CancelToken cancel) {
        Outcome one = Solver.solve(programme, LIMITS, cancel, Progress.SILENT);
        if (one.state() != Outcome.State.STOPPED || cancel.cancelled()) {
            return one;
        }
        List<Column> columns = programme.columns().stream().map(column -> new Column(column.name(), column.cost(),
                column.lower(), column.upper(), column.rank() == rank ? other().rank : column.rank())).toList();
        Outcome two = Solver.solve(new Programme(columns, programme.rows()), LIMITS, cancel, Progress.SILENT);
        return two.state() == Outcome.State.STOPPED && (!two.found() || one.cost() <= two.cost()) ? one : two;
    }
}
