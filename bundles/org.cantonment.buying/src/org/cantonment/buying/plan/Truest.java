package org.cantonment.buying.plan;

import java.util.List;
import java.util.Optional;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.stock.likeness.Truth;
import org.joda.money.CurrencyUnit;

/**
 * Looks, once it is settled what is bought, for the builds with which as many pieces as can be stand for themselves, and of
 * those for the fewest, with nothing worked over that need not be. Money comes first: nothing else is bought for it.
 */
public final class Truest {

    /** Beyond this the builds stay as they are. */
    private static final Limits LITTLE = new Limits(40_000, 2_000);

    private Truest() {
    }

    /** The plan with truer builds, or with fewer; the same plan if there are none, or they were not found soon. */
    public static Plan of(Question question, Plan plan, CurrencyUnit currency, CancelToken cancel) {
        if (done(plan) == 0) {
            return plan;
        }
        return truer(question, plan, currency, cancel)
                .filter(other -> exact(other) > exact(plan) || exact(other) == exact(plan) && done(other) < done(plan))
                .map(other -> other.told(plan.proven(), plan.settled(), plan.bound())).orElse(plan);
    }

    private static Optional<Plan> truer(Question question, Plan plan, CurrencyUnit currency, CancelToken cancel) {
        List<Target> fielded = plan.fielded().stream().map(target -> new Target(target.id(), target.title(), target.person(),
                target.stage(), target.needs(), target.allowance(), Optional.empty())).toList();
        Question settled = question.with(fielded);
        try {
            Formulation formulation = Formulation.settled(settled, plan.purchases(), cancel);
            Outcome outcome = Solver.solve(formulation.programme(), LITTLE, cancel, Progress.SILENT);
            return outcome.found() ? Optional.of(PlanReader.read(settled, formulation, currency, outcome.values(), cancel))
                    : Optional.empty();
        } catch (Cancelled | Muster.Undecided notSoon) {
            return Optional.empty();
        }
    }

    private static int exact(Plan plan) {
        return plan.turnouts().stream().mapToInt(one -> one.standing(Truth.EXACT)).sum();
    }

    /** How many parts are built to last, and how many conversions are made. */
    private static int done(Plan plan) {
        return plan.buildings().stream().mapToInt(Building::newly).sum()
                + plan.conversions().stream().mapToInt(Conversions::times).sum();
    }
}
