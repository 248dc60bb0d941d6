package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.buying.growth.Growth.Account;
import org.cantonment.buying.plan.Order;
import org.cantonment.buying.plan.Plan;
import org.cantonment.desk.turnout.Row;

/** What to buy before which round, as rows of a table with the columns of {@link BuyRows}. */
public final class GrowRows {
    private final GrowAnswer answer;
    private final GrowText text;
    private final PlanText plans;

    private GrowRows(GrowAnswer answer) {
        this.answer = answer;
        this.text = new GrowText(answer);
        this.plans = new PlanText(answer.shops().market().catalogue());
    }

    /** The whole, each round with its list, its boxes and builds, what to know besides. */
    public static List<Row> of(GrowAnswer answer) {
        return new GrowRows(answer).rows();
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        if (answer.plan().isEmpty()) {
            List<String> why = text.none();
            rows.add(new Row(List.of("No growth plan", "", why.get(0)), true, why.stream().skip(1)
                    .map(line -> Row.of("Why", "", line)).toList()));
            return rows;
        }
        Plan plan = answer.plan().get();
        rows.add(Row.of("Growth plan", Cash.text(plan.total()), text.proof(plan)));
        for (int stage = 0; stage < answer.steps().size(); stage++) {
            rows.add(step(plan, stage));
        }
        rows.add(Row.of("Left over", "", plans.leftovers(plan)));
        text.advice().forEach(line -> rows.add(Row.of("Looking ahead", "", line)));
        text.remarks().forEach(line -> rows.add(Row.of("To know", "", line)));
        return rows;
    }

    private Row step(Plan plan, int stage) {
        Step step = answer.steps().get(stage);
        String title = text.title(step);
        if (!step.out().isEmpty()) {
            return new Row(List.of(title, "", "Left out: " + step.out().get(0)), true, step.out().stream().skip(1)
                    .map(line -> Row.of("Why", "", line)).toList());
        }
        List<Row> parts = new ArrayList<>();
        step.breaches().forEach(one -> parts.add(new Row(List.of("Not legal", "", one.message()), true, List.of())));
        step.cautions().forEach(one -> parts.add(new Row(List.of("Caution", "", one.message()), true, List.of())));
        for (Order order : plan.orders()) {
            if (order.stage() == stage) {
                parts.add(new Row(List.of("From " + order.title(), Cash.text(order.total()), plans.order(order)), false,
                        plan.purchases().stream().filter(one -> one.stage() == stage
                                && one.ware().seller().equals(order.seller()))
                                .map(one -> Row.of(plans.boxes(one), Cash.text(one.sum()), plans.purchase(one))).toList()));
            }
        }
        plans.builds(plan, stage).forEach(build -> parts.add(Row.of("Build", "", build)));
        for (int i = 0; i < plan.fielded().size(); i++) {
            if (plan.fielded().get(i).stage() == stage) {
                parts.add(new Row(List.of("Fielded", "", plans.turnout(plan.turnouts().get(i))), false,
                        plans.alone(plan, i).stream().map(build -> Row.of("Build", "", build)).toList()));
            }
        }
        String work = PlanText.work(plan.work().get(stage), step.bench());
        if (!work.isEmpty()) {
            parts.add(Row.of("Work", "", work));
        }
        Account account = answer.growth().accounts().get(stage);
        account.inHand().ifPresent(left -> parts.add(Row.of("In hand", Cash.text(left), "what is left of the budgets")));
        return new Row(List.of(title, Cash.text(account.paid()), (step.composed() ? "Composed: " : "") + step.words()),
                !step.breaches().isEmpty() || !step.cautions().isEmpty(), parts);
    }
}
