package org.cantonment.buying.plan;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Turnout;

/**
 * Looks whether a target can be fielded with what a plan says is there then. Where meanings or conversions are tangled a
 * turnout may not be found at once; then it is looked for longer. When it is cancelled, what was found until then is worth
 * a short look, no more.
 */
final class Muster {

    /** So many branches are looked at where the usual number left it open. */
    private static final int MANY = 20 * Depot.BRANCHES;

    /** It was not settled whether a target can be fielded. */
    static final class Undecided extends Exception {

        private static final long serialVersionUID = 1L;

        /** A signal, no fault: it carries no stack. */
        private Undecided(Target target) {
            super(target.title(), null, false, false);
        }
    }

    private Muster() {
    }

    /**
     * Who stands where in a target; everything in it is there.
     *
     * @throws Undecided if that was not settled
     * @throws IllegalStateException if it is settled that something is short: then the plan is wrong
     */
    static Turnout of(Depot depot, Target target, CancelToken cancel) throws Undecided {
        Turnout turnout = look(depot, target, cancel);
        if (turnout.complete()) {
            return turnout;
        }
        if (turnout.proven()) {
            throw new IllegalStateException("The plan leaves " + turnout.lacking() + " short in " + target.id());
        }
        throw new Undecided(target);
    }

    private static Turnout look(Depot depot, Target target, CancelToken cancel) {
        try {
            cancel.check();
            Turnout turnout = depot.turnout(target.needs(), cancel);
            return turnout.complete() || turnout.proven() ? turnout : depot.turnout(target.needs(), MANY, cancel);
        } catch (Cancelled inAHurry) {
            return depot.turnout(target.needs(), Depot.BRANCHES_FOR_ENOUGH, CancelToken.NEVER);
        }
    }
}
