package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.List;
import java.util.Map;

import org.cantonment.buying.plan.Building;
import org.cantonment.buying.plan.Conversions;
import org.cantonment.buying.plan.Order;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.desk.shopping.PlanText;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Turnout;
import org.joda.money.Money;

import com.google.gson.stream.JsonWriter;

/** A plan as JSON, and what answers about buying have in common. Money is a text with all its decimals. */
final class PlanJson {
    private final JsonWriter json;
    private final Shops shops;

    PlanJson(JsonWriter json, Shops shops) {
        this.json = json;
        this.shops = shops;
    }

    void shops() throws IOException {
        json.name("day").value(shops.day().toString());
        json.name("currency").value(shops.currency().getCode());
    }

    void money(String name, Money money) throws IOException {
        json.name(name).value(Amounts.text(money));
    }

    void texts(String name, List<String> texts) throws IOException {
        json.name(name).beginArray();
        for (String text : texts) {
            json.value(text);
        }
        json.endArray();
    }

    void findings(String name, List<Finding> findings) throws IOException {
        json.name(name).beginArray();
        for (Finding finding : findings) {
            json.beginObject();
            json.name("code").value(finding.code());
            json.name("message").value(finding.message());
            json.endObject();
        }
        json.endArray();
    }

    /** An object. */
    void plan(Plan plan) throws IOException {
        json.beginObject();
        money("total", plan.total());
        json.name("proven").value(plan.proven());
        json.name("settled").value(plan.settled());
        money("bound", plan.bound());
        json.name("orders").beginArray();
        for (Order order : plan.orders()) {
            order(plan, order);
        }
        json.endArray();
        builds("builds", plan.buildings());
        conversions(plan);
        json.name("work").beginArray();
        for (int stage = 0; stage < plan.work().size(); stage++) {
            json.beginObject();
            json.name("stage").value(stage + 1L);
            json.name("minutes").value(plan.work().get(stage).minutes());
            json.name("parts").value(plan.work().get(stage).parts());
            json.endObject();
        }
        json.endArray();
        counts("untimed", plan.allWork().untimed());
        json.name("leftovers").beginArray();
        for (var left : plan.leftovers()) {
            counted(left.what(), left.count());
        }
        json.endArray();
        json.name("turnouts").beginArray();
        for (int i = 0; i < plan.fielded().size(); i++) {
            turnout(plan, i);
        }
        json.endArray();
        json.endObject();
    }

    private void order(Plan plan, Order order) throws IOException {
        json.beginObject();
        json.name("stage").value(order.stage() + 1L);
        json.name("seller").value(order.seller().text());
        json.name("title").value(order.title());
        json.name("boxes").beginArray();
        for (Purchase one : plan.purchases()) {
            if (one.stage() == order.stage() && one.ware().seller().equals(order.seller())) {
                json.beginObject();
                json.name("box").value(one.ware().box().text());
                json.name("title").value(one.ware().title());
                json.name("code").value(one.ware().code());
                json.name("count").value(one.count());
                json.name("each").value(one.ware().boxes());
                money("sum", one.sum());
                json.endObject();
            }
        }
        json.endArray();
        money("goods", order.goods());
        money("postage", order.sending());
        money("discount", order.off());
        money("total", order.total());
        json.endObject();
    }

    private void builds(String name, List<Building> builds) throws IOException {
        json.name(name).beginArray();
        for (Building one : builds) {
            if (one.newly() > 0 && !one.build().equals(one.part())) {
                json.beginObject();
                json.name("stage").value(one.stage() + 1L);
                json.name("part").value(one.part().text());
                json.name("title").value(shops.market().catalogue().title(one.part()));
                json.name("count").value(one.newly());
                counts("gives", one.gives());
                json.endObject();
            }
        }
        json.endArray();
    }

    private void conversions(Plan plan) throws IOException {
        json.name("conversions").beginArray();
        for (Conversions one : plan.conversions()) {
            json.beginObject();
            json.name("stage").value(one.stage() + 1L);
            json.name("times").value(one.times());
            counts("from", one.conversion().from());
            counts("to", Map.of(one.conversion().to(), one.conversion().gives()));
            json.endObject();
        }
        json.endArray();
    }

    private void counts(String name, Map<Id, Integer> counts) throws IOException {
        json.name(name).beginArray();
        for (Map.Entry<Id, Integer> one : counts.entrySet()) {
            counted(one.getKey(), one.getValue());
        }
        json.endArray();
    }

    void counted(Id what, int count) throws IOException {
        json.beginObject();
        json.name("what").value(what.text());
        json.name("title").value(shops.market().catalogue().title(what));
        json.name("count").value(count);
        json.endObject();
    }

    private void turnout(Plan plan, int list) throws IOException {
        Turnout turnout = plan.turnouts().get(list);
        json.beginObject();
        json.name("list").value(plan.fielded().get(list).title());
        json.name("stage").value(plan.fielded().get(list).stage() + 1L);
        json.name("pieces").value(turnout.needed());
        for (Truth truth : Truth.values()) {
            json.name(PlanText.word(truth)).value(turnout.standing(truth));
        }
        json.name("guessed").value(turnout.guesses().stream().mapToInt(one -> one.pieces()).sum());
        builds("alone", plan.alone().get(list));
        json.endObject();
    }
}
