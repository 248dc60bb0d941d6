package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Order;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.solve.Limits;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.turnout.ListTurnout;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.stock.supply.Supply;

/**
 * What to buy at least cost where lists are short.
 *
 * @param shops  where; empty if that cannot be said
 * @param answer the plan, or why there is none; empty without shops
 * @param why    without shops: why, as a whole sentence
 */
public record Closing(Optional<Shops> shops, Optional<Answer> answer, String why) {
    /** A turnout is waited for: what is not found with so much work is told with its bound. */
    private static final Limits LIMITS = new Limits(200_000, 20_000);

    /** What closes one list, from what is there for it. */
    public static Closing of(Meanings meanings, ListTurnout list, CancelToken cancel, Progress progress) {
        return ask(meanings, list.list().player(), List.of(list), List.of(list.there()), cancel, progress);
    }

    /** What closes several lists of one player, with one choice of what is glued. */
    public static Closing ofAll(Meanings meanings, List<ListTurnout> lists, CancelToken cancel, Progress progress) {
        return ask(meanings, lists.get(0).list().player(), lists, List.of(lists.get(0).there()), cancel, progress);
    }

    /** What closes the lists of several players in one order, each from what he has when the loans are settled. */
    public static Closing together(Meanings meanings, List<ListTurnout> lists, CancelToken cancel, Progress progress) {
        return ask(meanings, Optional.empty(), lists, lists.stream().map(ListTurnout::there).toList(), cancel, progress);
    }

    private static Closing ask(Meanings meanings, Optional<Id> player, List<ListTurnout> lists, List<Supply> shelves,
            CancelToken cancel, Progress progress) {
        try {
            Shops shops = Shops.of(meanings, player, Errand.of(List.of(), Optional.empty()));
            List<Target> targets = new ArrayList<>();
            for (ListTurnout list : lists) {
                Target target = Target.now(list.list().id(), list.title(), list.task().needs(), list.task().allowance());
                targets.add(target.of(shelves.size() == 1 ? 0 : targets.size()));
            }
            return new Closing(Optional.of(shops), Optional.of(Planner.plan(Question.together(shops.market(), shelves, targets),
                    shops.currency(), LIMITS, cancel, progress)), "");
        } catch (Unclear e) {
            return new Closing(Optional.empty(), Optional.empty(), e.getMessage());
        }
    }

    /** The plan, if there is one. */
    public Optional<Plan> plan() {
        return answer.flatMap(Answer::plan);
    }

    /** Why there is no plan, as far as it is known. */
    public List<Finding> findings() {
        return plan().isPresent() ? List.of() : answer.map(Answer::findings).orElse(List.of()).stream()
                .filter(one -> !one.code().equals(Shops.NO_RATE)).toList();
    }

    /** "At least cost: 9.00 EUR, 1 Three scout carts from The works; by prices of …", or why not; whole sentences. */
    public List<String> words() {
        if (shops.isEmpty()) {
            return List.of("What closing it costs is not known: " + why);
        }
        List<String> lines = new ArrayList<>();
        plan().ifPresentOrElse(plan -> bought(plan, lines), () -> none(lines));
        shops.get().leftOut().ifPresent(lines::add);
        return lines;
    }

    private void bought(Plan plan, List<String> lines) {
        PlanText text = new PlanText(shops.get().market().catalogue());
        if (plan.purchases().isEmpty()) {
            lines.add("Nothing need be bought: a longer search fields all of it.");
        } else {
            List<String> orders = plan.orders().stream().map(order -> order(plan, order, text)).toList();
            lines.add("At least cost: " + Cash.text(plan.total()) + ", " + PlanText.and(orders) + "; by prices of "
                    + shops.get().day() + " (" + shops.get().why() + ")." + (plan.proven() ? "" : " " + PlanText.proof(plan)));
        }
        List<String> builds = text.builtOfBought(plan);
        if (!builds.isEmpty()) {
            lines.add("To build of that: " + String.join("; ", builds) + ".");
        }
    }

    private static String order(Plan plan, Order order, PlanText text) {
        String boxes = text.boxes(plan.purchases().stream().filter(one -> one.ware().seller().equals(order.seller())).toList());
        String sending = order.sending().isZero() ? "" : " (postage " + Amounts.text(order.sending()) + ")";
        return boxes + " from " + order.title() + sending;
    }

    private void none(List<String> lines) {
        if (answer.get().impossible()) {
            lines.add("No purchase closes it, by prices of " + shops.get().day() + " (" + shops.get().why() + ").");
            findings().stream().map(Finding::message).distinct().limit(Shopper.MOST_REMARKS).forEach(lines::add);
        } else {
            lines.add("What closes it at least cost was not found in time" + answer.get().bound().map(bound ->
                    "; nothing costs less than " + Cash.text(bound)).orElse("") + ".");
        }
    }
}
