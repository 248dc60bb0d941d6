package org.cantonment.rules.check;


import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.LeastFill;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.Situation;

/**
 * What every choice costs at least, a formation with its compulsory billets filled as cheaply as can be. Reckoned once,
 * when first asked; formations that can only be filled by themselves cost {@link #NEVER}.
 */
public final class Fills {

    /** The cost of what cannot be filled. */
    static final long NEVER = LeastFill.NEVER;

    private final Ruling ruling;
    private final Situation situation;
    private LeastFill costs;

    /** Fills under a ruling, for the side of the situation. */
    public Fills(Ruling ruling, Situation situation) {
        this.ruling = ruling;
        this.situation = situation;
    }

    boolean mayTake(Choice choice) {
        return situation.mayTake(choice);
    }

    /** What a choice costs at least. */
    long cost(Choice choice) {
        return costs().of(choice);
    }

    private LeastFill costs() {
        if (costs == null) {
            costs = new LeastFill(ruling, situation, false, Choice::leastPoints, FormationView::points);
        }
        return costs;
    }

    /** The cheapest of those that may be taken here; null if there is none that can be filled. */
    Choice cheapest(Selector of) {
        Choice best = null;
        for (int i = of.nextChoice(0); i >= 0; i = of.nextChoice(i + 1)) {
            Choice choice = ruling.choices().get(i);
            if (mayTake(choice) && cost(choice) < (best == null ? NEVER : cost(best))) {
                best = choice;
            }
        }
        return best;
    }
}
