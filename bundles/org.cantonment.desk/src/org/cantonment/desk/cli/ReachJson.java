package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.Optional;

import org.cantonment.buying.plan.Purchase;
import org.cantonment.desk.reach.Price;
import org.cantonment.desk.reach.ReachAnswer;
import org.cantonment.desk.reach.ReachRow;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.common.Id;

import com.google.gson.stream.JsonWriter;

/** A player's reach as JSON, as docs/json/reach.schema.json describes it. */
final class ReachJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-reach-1";

    private ReachJson() {
    }

    static String write(ReachAnswer answer) {
        return Json.text(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("player").value(answer.title());
            if (answer.when().week().isPresent()) {
                json.name("week").value(answer.when().week().getAsInt());
            }
            if (answer.shops().isPresent()) {
                json.name("day").value(answer.shops().get().day().toString());
                json.name("currency").value(answer.shops().get().currency().getCode());
            }
            if (answer.noMoney().isPresent()) {
                json.name("noMoney").value(answer.noMoney().get());
            }
            json.name("formations").beginArray();
            for (ReachRow row : answer.rows()) {
                json.beginObject();
                json.name("era").value(row.era().name());
                json.name("eraTitle").value(row.eraTitle());
                json.name("formation").value(row.formation().name());
                json.name("title").value(row.title());
                filled(json, "least", row.least());
                filled(json, "most", row.most());
                json.endObject();
            }
            json.endArray();
            json.endObject();
        });
    }

    private static void filled(JsonWriter json, String name, Optional<ReachRow.Filled> filled) throws IOException {
        if (filled.isEmpty()) {
            return;
        }
        json.name(name).beginObject();
        json.name("units").value(filled.get().units());
        json.name("needed").value(filled.get().needed());
        json.name("lacking").value(filled.get().lacking());
        json.name("proven").value(filled.get().proven());
        json.name("missing").beginArray();
        for (ReachRow.Missing missing : filled.get().missing()) {
            json.beginObject();
            json.name("count").value(missing.count());
            json.name("anyOf").beginArray();
            for (Id type : missing.anyOf()) {
                json.value(type.name());
            }
            json.endArray();
            json.endObject();
        }
        json.endArray();
        if (filled.get().price().isPresent()) {
            price(json, filled.get().price().get());
        }
        json.endObject();
    }

    private static void price(JsonWriter json, Price price) throws IOException {
        json.name("price").beginObject();
        if (price.money().isPresent()) {
            json.name("total").value(Amounts.text(price.money().get()));
        }
        json.name("proven").value(price.proven());
        if (price.units().isPresent()) {
            json.name("units").value(price.units().get());
        }
        json.name("buy").beginArray();
        for (Purchase purchase : price.purchases()) {
            json.beginObject();
            json.name("box").value(purchase.ware().box().name());
            json.name("code").value(purchase.ware().code());
            json.name("title").value(purchase.ware().title());
            json.name("seller").value(purchase.ware().seller().name());
            json.name("count").value(purchase.count());
            json.name("boxes").value(purchase.ware().boxes());
            json.name("sum").value(Amounts.text(purchase.sum()));
            json.endObject();
        }
        json.endArray();
        json.name("why").beginArray();
        for (String why : price.why()) {
            json.value(why);
        }
        json.endArray();
        json.endObject();
    }
}
