package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.Optional;

import org.cantonment.desk.reach.ReachAnswer;
import org.cantonment.desk.reach.ReachRow;
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
        json.endObject();
    }
}
