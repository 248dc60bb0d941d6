package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.List;

import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Priorities.Left;
import org.cantonment.desk.shopping.Aim;
import org.cantonment.desk.shopping.BuyAnswer;
import org.cantonment.desk.shopping.Shopper;

import com.google.gson.stream.JsonWriter;

/** What to buy as JSON, as docs/json/buy.schema.json describes it. */
final class BuyJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-buy-1";

    private final BuyAnswer answer;

    BuyJson(BuyAnswer answer) {
        this.answer = answer;
    }

    String write() {
        return Json.text(json -> {
            PlanJson plans = new PlanJson(json, answer.shops());
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("player").value(answer.shopper().title());
            if (!answer.shopper().others().isEmpty()) {
                plans.texts("together", answer.shopper().others().stream().map(Shopper::title).toList());
            }
            plans.shops();
            plans.texts("lists", answer.shopper().wanted().stream().map(Aim::title).toList());
            if (answer.budget().isPresent()) {
                plans.money("budget", answer.budget().get());
            }
            json.name("impossible").value(answer.answer().impossible());
            json.name("stopped").value(answer.stopped());
            if (answer.answer().plan().isPresent()) {
                json.name("plan");
                plans.plan(answer.answer().plan().get());
            } else if (answer.answer().bound().isPresent()) {
                plans.money("bound", answer.answer().bound().get());
            }
            json.name("beyond").beginArray();
            for (Left left : answer.left()) {
                left(json, plans, left);
            }
            json.endArray();
            if (answer.further().isPresent()) {
                plans.money("further", answer.further().get());
            }
            plans.money("margin", answer.margin());
            json.name("others").beginArray();
            for (Plan other : answer.others()) {
                plans.plan(other);
            }
            json.endArray();
            plans.findings("findings", answer.answer().findings());
            plans.texts("remarks", answer.shopper().remarks());
            json.endObject();
        });
    }

    private void left(JsonWriter json, PlanJson plans, Left left) throws IOException {
        json.beginObject();
        json.name("list").value(left.target().title());
        if (left.together().isPresent()) {
            plans.money("together", left.together().get());
        }
        json.name("settled").value(left.settled());
        plans.findings("why", answer.why().getOrDefault(left.target().id(), List.of()));
        json.endObject();
    }
}
