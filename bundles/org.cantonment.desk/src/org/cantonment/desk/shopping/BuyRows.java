package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Order;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Priorities.Left;
import org.cantonment.desk.turnout.Row;

/** What to buy, as rows of a table that open into their parts. */
public final class BuyRows {
    /** What stands in the columns. */
    public static final List<String> COLUMNS = List.of("What", "Money", "In words");

    private final BuyAnswer answer;
    private final BuyText text;
    private final PlanText plans;

    private BuyRows(BuyAnswer answer) {
        this.answer = answer;
        this.text = new BuyText(answer);
        this.plans = new PlanText(answer.shops().market().catalogue(), answer.shopper().people().stream()
                .map(Shopper::title).toList());
    }

    /** The plan, what is beyond the budget, the next best plans, what to know besides. */
    public static List<Row> of(BuyAnswer answer) {
        return new BuyRows(answer).rows();
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        answer.answer().plan().ifPresentOrElse(plan -> rows.add(plan("Buy", plan, PlanText.proof(plan))),
                () -> rows.add(new Row(List.of("No plan", "", text.none().get(0)), true,
                        text.none().stream().skip(1).map(line -> Row.of("Why", "", line)).toList())));
        for (Left left : answer.left()) {
            rows.add(new Row(List.of("Beyond: " + left.target().title(), left.together().map(Cash::text).orElse(""),
                    text.left(left)), true, List.of()));
        }
        for (Plan other : answer.others()) {
            rows.add(plan("Next best", other, Cash.text(other.total().minus(answer.answer().plan().orElseThrow().total()))
                    + " more."));
        }
        if (answer.answer().plan().isPresent()) {
            text.remarks().forEach(remark -> rows.add(Row.of("To know", "", remark)));
        }
        return rows;
    }

    private Row plan(String title, Plan plan, String words) {
        List<Row> parts = new ArrayList<>();
        for (Order order : plan.orders()) {
            parts.add(new Row(List.of("From " + order.title(), Cash.text(order.total()), plans.order(order)), false,
                    plan.purchases().stream().filter(one -> one.ware().seller().equals(order.seller()))
                            .map(one -> Row.of(plans.boxes(one), Cash.text(one.sum()), plans.purchase(one))).toList()));
        }
        plans.builds(plan, 0).forEach(build -> parts.add(Row.of("Build", "", build)));
        List.of(PlanText.work(plan.allWork(), Optional.empty()), plans.untimed(plan, false)).stream()
                .filter(line -> !line.isEmpty()).forEach(line -> parts.add(Row.of("Work", "", line)));
        if (!plan.purchases().isEmpty()) {
            parts.add(Row.of("Left over", "", plans.leftovers(plan)));
        }
        for (int i = 0; i < plan.fielded().size(); i++) {
            parts.add(new Row(List.of(plan.fielded().get(i).title(), "", plans.turnout(plan.turnouts().get(i))), false,
                    plans.alone(plan, i).stream().map(build -> Row.of("Build", "", build)).toList()));
        }
        return new Row(List.of(title, Cash.text(plan.total()), plan.purchases().isEmpty() ? "Nothing need be bought. " + words
                : plans.boxes(plan.purchases()) + ". " + words), false, parts);
    }
}
