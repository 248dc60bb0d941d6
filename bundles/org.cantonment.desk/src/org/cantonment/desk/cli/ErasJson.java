package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.desk.eras.ChangeAnswer;
import org.cantonment.desk.eras.Changes;
import org.cantonment.desk.eras.Edit;
import org.cantonment.desk.eras.EraAnswer;
import org.cantonment.desk.eras.ListEras;
import org.cantonment.desk.eras.Objection;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.Document;
import org.cantonment.notation.text.TextChange;
import org.cantonment.rules.Verdict;

import com.google.gson.stream.JsonWriter;

/** How a list stands in all eras as JSON, as docs/json/eras.schema.json describes it. */
final class ErasJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-eras-1";

    private final Terminal terminal;

    ErasJson(Terminal terminal) {
        this.terminal = terminal;
    }

    String write(Path file, ListEras answer, Document document) {
        return Json.text(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("list").beginObject();
            json.name("file").value(terminal.show(file));
            json.name("title").value(answer.title());
            json.endObject();
            json.name("owned").beginObject();
            json.name("known").value(answer.owned().known());
            json.name(answer.owned().known() ? "by" : "why").value(answer.owned().known() ? answer.owned().who()
                    : answer.owned().why());
            json.endObject();
            json.name("unasked").beginArray();
            for (String why : answer.unasked()) {
                json.value(why);
            }
            json.endArray();
            json.name("eras").beginArray();
            for (EraAnswer era : answer.eras()) {
                era(json, era, document);
            }
            json.endArray();
            json.endObject();
        });
    }

    private static void era(JsonWriter json, EraAnswer era, Document document) throws IOException {
        json.beginObject();
        json.name("era").value(era.era().name());
        json.name("title").value(era.title());
        json.name("written").value(era.written());
        json.name("legal").value(era.legal());
        json.name("points").value(era.points());
        limit(json, era.limit());
        breaches(json, era.verdict(), era.objections());
        changes(json, "least", era.atLarge(), document);
        changes(json, "leastOwned", era.owned(), document);
        json.endObject();
    }

    private static void breaches(JsonWriter json, Verdict verdict, List<Objection> objections) throws IOException {
        json.name("breaches").beginArray();
        for (Finding finding : verdict.findings(Severity.BREACH)) {
            breach(json, finding, Optional.empty());
        }
        for (Objection objection : objections) {
            breach(json, objection.finding(), Optional.of(objection.check()));
        }
        json.endArray();
    }

    private static void breach(JsonWriter json, Finding finding, Optional<String> check) throws IOException {
        json.beginObject();
        json.name("code").value(finding.code());
        json.name("message").value(finding.message());
        if (check.isPresent()) {
            json.name("check").value(check.get());
        }
        json.endObject();
    }

    private static void limit(JsonWriter json, OptionalInt limit) throws IOException {
        if (limit.isPresent()) {
            json.name("limit").value(limit.getAsInt());
        }
    }

    private static void changes(JsonWriter json, String name, Optional<Changes> changes, Document document)
            throws IOException {
        if (changes.isEmpty()) {
            return;
        }
        json.name(name).beginObject();
        json.name("proven").value(changes.get().proven());
        if (!changes.get().complete()) {
            json.name("bound").value(changes.get().bound());
        }
        json.name("changes").beginArray();
        for (ChangeAnswer answer : changes.get().answers()) {
            change(json, answer, document);
        }
        json.endArray();
        json.endObject();
    }

    private static void change(JsonWriter json, ChangeAnswer answer, Document document) throws IOException {
        json.beginObject();
        json.name("moved").value(answer.moved());
        json.name("units").value(answer.units());
        json.name("points").value(answer.points());
        json.name("legal").value(answer.legal());
        breaches(json, answer.verdict(), answer.objections());
        json.name("actions").beginArray();
        for (Edit edit : answer.edits()) {
            json.value(edit.words());
        }
        json.endArray();
        json.name("edits").beginArray();
        for (TextChange edit : document.write(answer.mend()).changes()) {
            Json.edit(json, edit);
        }
        json.endArray();
        json.endObject();
    }
}
