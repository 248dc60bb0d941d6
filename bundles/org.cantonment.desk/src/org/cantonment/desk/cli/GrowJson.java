package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.Locale;

import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.growth.Growth.Account;
import org.cantonment.desk.shopping.GrowAnswer;
import org.cantonment.desk.shopping.Step;

import com.google.gson.stream.JsonWriter;

/** What to buy before which round as JSON, as docs/json/grow.schema.json describes it. */
final class GrowJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-grow-1";

    private final GrowAnswer answer;

    GrowJson(GrowAnswer answer) {
        this.answer = answer;
    }

    String write() {
        return Json.text(json -> {
            PlanJson plans = new PlanJson(json, answer.shops());
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("player").value(answer.shopper().title());
            plans.shops();
            json.name("saved").value(answer.saved());
            json.name("rounds").beginArray();
            for (int stage = 0; stage < answer.steps().size(); stage++) {
                step(json, plans, stage);
            }
            json.endArray();
            json.name("impossible").value(answer.growth().answer().impossible());
            json.name("lists").value(answer.growth().lists().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.name("stopped").value(answer.stopped());
            if (answer.plan().isPresent()) {
                json.name("plan");
                plans.plan(answer.plan().get());
            }
            growth(json, plans, answer.growth());
            plans.findings("findings", answer.growth().answer().findings());
            plans.texts("remarks", answer.shopper().remarks());
            json.endObject();
        });
    }

    private void step(JsonWriter json, PlanJson plans, int stage) throws IOException {
        Step step = answer.steps().get(stage);
        json.beginObject();
        json.name("round").value(step.round());
        json.name("title").value(step.title());
        if (step.limit().isPresent()) {
            json.name("limit").value(step.limit().getAsInt());
        }
        json.name("composed").value(step.composed());
        json.name("found").value(!step.composed() || step.out().isEmpty());
        if (!step.out().isEmpty()) {
            plans.texts("leftOut", step.out());
        }
        if (step.verdict().isPresent()) {
            json.name("points").value(step.verdict().get().points());
            json.name("list").value(step.words());
            if (!step.book().isEmpty()) {
                json.name("book").value(step.book());
            }
            plans.findings("breaches", step.breaches());
            plans.findings("cautions", step.cautions());
        }
        if (step.bench().isPresent()) {
            json.name("bench").beginObject();
            json.name(step.bench().get().measure().name().toLowerCase(Locale.ROOT)).value(step.bench().get().most());
            json.endObject();
        }
        if (answer.growth().accounts().size() > stage) {
            account(plans, answer.growth().accounts().get(stage));
        }
        json.endObject();
    }

    private static void account(PlanJson plans, Account account) throws IOException {
        if (account.budget().isPresent()) {
            plans.money("budget", account.budget().get());
        }
        if (account.available().isPresent()) {
            plans.money("available", account.available().get());
        }
        plans.money("paid", account.paid());
        if (account.inHand().isPresent()) {
            plans.money("inHand", account.inHand().get());
        }
    }

    private void growth(JsonWriter json, PlanJson plans, Growth growth) throws IOException {
        if (growth.shortfall().isPresent()) {
            json.name("shortfall").beginObject();
            json.name("round").value(answer.steps().get(growth.shortfall().get().stage()).round());
            json.name("settled").value(growth.shortfall().get().settled());
            plans.money("missing", growth.shortfall().get().missing());
            plans.money("needed", growth.shortfall().get().needed());
            plans.money("available", growth.shortfall().get().available());
            json.endObject();
        }
        if (growth.stepwise().isPresent()) {
            plans.money("stepwise", growth.stepwise().get());
        }
        if (growth.advice().isPresent()) {
            json.name("advice").beginObject();
            plans.money("more", growth.advice().get().more());
            plans.money("saves", growth.advice().get().saves());
            json.endObject();
        }
    }
}
