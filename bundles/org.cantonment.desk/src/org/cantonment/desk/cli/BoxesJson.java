package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.Locale;

import org.cantonment.desk.reach.BoxRow;
import org.cantonment.desk.reach.BoxesAnswer;
import org.cantonment.domain.common.Amounts;

import com.google.gson.stream.JsonWriter;

/** What boxes would bring within reach as JSON, as docs/json/reach-boxes.schema.json describes it. */
final class BoxesJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-reach-boxes-1";

    private BoxesJson() {
    }

    static String write(BoxesAnswer answer) {
        return Json.text(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("player").value(answer.title());
            if (answer.when().week().isPresent()) {
                json.name("week").value(answer.when().week().getAsInt());
            }
            json.name("day").value(answer.shops().day().toString());
            json.name("currency").value(answer.shops().currency().getCode());
            json.name("lookedAt").value(answer.boxes());
            json.name("boxes").beginArray();
            for (BoxRow row : answer.rows()) {
                box(json, row);
            }
            json.endArray();
            json.endObject();
        });
    }

    private static void box(JsonWriter json, BoxRow row) throws IOException {
        json.beginObject();
        json.name("box").value(row.box().name());
        json.name("code").value(row.code());
        json.name("title").value(row.title());
        json.name("price").value(Amounts.text(row.price()));
        json.name("seller").value(row.seller());
        json.name("opens").beginArray();
        for (BoxRow.Opened opened : row.opened()) {
            json.beginObject();
            json.name("era").value(opened.era().name());
            json.name("eraTitle").value(opened.eraTitle());
            json.name("formation").value(opened.formation().name());
            json.name("title").value(opened.title());
            json.name("strength").value(opened.strength().name().toLowerCase(Locale.ROOT));
            json.endObject();
        }
        json.endArray();
        json.endObject();
    }
}
