package org.cantonment.buying.growth;

import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Answer;
import org.joda.money.Money;

/**
 * A growth plan and what to know about it.
 *
 * @param answer the plan, with one target or more in each stage
 * @param lists how the lists were come by
 * @param accounts the money, stage by stage; empty if there is no plan
 * @param shortfall where there is no plan for want of money: the first stage that cannot be done
 * @param stepwise what it all costs at best, budgets left aside, after the step that is cheapest for the first stage alone;
 *         empty if that leads nowhere
 * @param advice how little more in the first stage would make it cheaper, and by how much
 */
public record Growth(Answer answer, Lists lists, List<Account> accounts, Optional<Shortfall> shortfall, Optional<Money> stepwise,
        Optional<Advice> advice) {

    /** How the lists of a plan were come by. */
    public enum Lists {
        /** All were given. */
        GIVEN,
        /** Some were composed, and no others of those that were tried cost less. */
        BEST_OF_TRIED,
        /** Some were composed; that no others would do better is not proven. */
        GOOD
    }

    /**
     * The money of a stage.
     *
     * @param budget what comes in; empty where there is no end of it
     * @param available what may be spent: what comes in and, where it is saved up, what was in hand before
     * @param inHand what is left and may be spent later; empty where nothing is saved up or there is no end of it
     */
    public record Account(int stage, Optional<Money> budget, Optional<Money> available, Money paid,
            Optional<Money> inHand) {
    }

    /**
     * A stage that cannot be done within its budget.
     *
     * @param settled whether the stages before can be done and nothing less would do; else all until this stage together are
     *         short at least so much
     * @param missing by how much it is short
     * @param needed what must be available in it, or until then
     * @param available what is at the most
     */
    public record Shortfall(int stage, boolean settled, Money missing, Money needed, Money available) {
    }

    /** So much more to spend in the first stage makes the whole cheaper by so much. */
    public record Advice(Money more, Money saves) {
    }

    public Growth {
        accounts = List.copyOf(accounts);
    }
}
