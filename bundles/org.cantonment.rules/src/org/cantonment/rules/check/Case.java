package org.cantonment.rules.check;

import java.util.List;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.muster.Layout;
import org.cantonment.rules.expression.Evaluator;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/**
 * What a check sees: a list, or one contingent of it, laid out under its rules.
 *
 * @param list the list that it belongs to
 * @param layout this list or contingent
 * @param others the musters of the list's other parts
 * @param points this part's limit of points, if there is one
 * @param used the points of the whole list
 * @param contingent whether it is a contingent with a limit of its own
 * @param fills what choices cost at least
 * @param standing which limits hold, once they were asked
 */
public record Case(ForceList list, Layout layout, List<Muster> others, OptionalInt points, long used,
        boolean contingent, Situation situation, Fills fills, Standing standing) {

    /** The entries, counted and priced. */
    public Muster muster() {
        return layout.muster();
    }

    /** The rules it is judged by. */
    public Ruling ruling() {
        return layout.muster().ruling();
    }

    /** The limits that hold for this list, their conditions asked. */
    List<LimitView> limits() {
        return standing.of(this);
    }

    /** Works expressions out over this list. */
    Evaluator evaluator() {
        return standing.evaluator(this);
    }

    /** The id of the list or contingent. */
    Id place() {
        return muster().id();
    }

    /** The points of this part. */
    long usedHere() {
        return muster().tally().points();
    }

    /** How many points may still be spent here; a great many without a limit. */
    long room() {
        return points.isPresent() ? points.getAsInt() - (contingent ? usedHere() : used) : Long.MAX_VALUE / 4;
    }

    /** Whether the choice may be taken here and now, as far as its era and side go. */
    boolean mayTake(Choice choice) {
        return fills.mayTake(choice);
    }
}
