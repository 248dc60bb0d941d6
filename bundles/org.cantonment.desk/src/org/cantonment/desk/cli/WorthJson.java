package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.worth.Worth;
import org.cantonment.buying.worth.Worth.ExtraWorth;
import org.cantonment.buying.worth.Worth.ToPlayer;
import org.cantonment.desk.shopping.Aim;
import org.cantonment.desk.shopping.Shopper;
import org.cantonment.desk.shopping.WorthAnswer;
import org.joda.money.Money;

import com.google.gson.stream.JsonWriter;

/** What a box is worth as JSON, as docs/json/worth.schema.json describes it. */
final class WorthJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-worth-1";

    private final WorthAnswer answer;

    WorthJson(WorthAnswer answer) {
        this.answer = answer;
    }

    String write() {
        Worth worth = answer.worth();
        return Json.text(json -> {
            PlanJson plans = new PlanJson(json, answer.shops());
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("box").value(worth.box().text());
            json.name("title").value(worth.title());
            plans.shops();
            money(plans, "price", worth.price());
            money(plans, "bare", worth.bare());
            plan(json, plans, "singles", worth.singles());
            money(plans, "saving", worth.saving());
            json.name("extras").beginArray();
            for (ExtraWorth extra : worth.extras()) {
                extra(json, plans, extra);
            }
            json.endArray();
            money(plans, "savingWithExtras", worth.savingWithExtras());
            if (worth.player().isPresent()) {
                json.name("toPlayer");
                player(json, plans, answer.shopper().orElseThrow(), worth.player().get());
            }
            json.name("stopped").value(answer.stopped());
            plans.findings("findings", worth.findings());
            plans.findings("leftOut", answer.shops().market().findings());
            plans.texts("remarks", answer.shopper().map(Shopper::remarks).orElse(List.of()));
            json.endObject();
        });
    }

    private void extra(JsonWriter json, PlanJson plans, ExtraWorth extra) throws IOException {
        json.beginObject();
        json.name("extra").value(extra.extra().text());
        json.name("title").value(answer.shops().market().catalogue().title(extra.extra()));
        json.name("count").value(extra.count());
        money(plans, "value", extra.value());
        json.name("sold").value(extra.sold());
        json.endObject();
    }

    private void player(JsonWriter json, PlanJson plans, Shopper shopper, ToPlayer player) throws IOException {
        json.beginObject();
        json.name("player").value(shopper.title());
        plans.texts("lists", shopper.aims().stream().map(Aim::title).toList());
        plan(json, plans, "without", player.without());
        plan(json, plans, "with", Optional.of(player.with()));
        money(plans, "saving", player.saving());
        plan(json, plans, "made", player.made());
        money(plans, "dearer", player.dearer());
        json.endObject();
    }

    private static void money(PlanJson plans, String name, Optional<Money> money) throws IOException {
        if (money.isPresent()) {
            plans.money(name, money.get());
        }
    }

    private static void plan(JsonWriter json, PlanJson plans, String name, Optional<Plan> plan) throws IOException {
        if (plan.isPresent()) {
            json.name(name);
            plans.plan(plan.get());
        }
    }
}
