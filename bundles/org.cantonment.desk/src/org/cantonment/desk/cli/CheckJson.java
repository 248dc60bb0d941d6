package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

import org.cantonment.desk.LocatedFinding;
import org.cantonment.notation.text.TextChange;
import org.cantonment.notation.text.TextMend;

import com.google.gson.stream.JsonWriter;

/** The answer of a check as JSON, as docs/json/check.schema.json describes it. */
final class CheckJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-check-1";

    private final Terminal terminal;

    CheckJson(Terminal terminal) {
        this.terminal = terminal;
    }

    /** One object, on several lines, without a line end behind it. */
    String write(List<LocatedFinding> findings, CheckSummary summary) {
        return Json.text(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("findings").beginArray();
            for (LocatedFinding finding : findings) {
                finding(json, finding);
            }
            json.endArray();
            json.name("summary").beginObject();
            json.name("files").value(summary.files());
            json.name("lists").value(summary.lists());
            json.name("breaches").value(summary.breaches());
            json.name("cautions").value(summary.cautions());
            json.name("notes").value(summary.notes());
            json.endObject();
            json.endObject();
        });
    }

    /** One finding, as the schema's definition says. */
    void finding(JsonWriter json, LocatedFinding finding) throws IOException {
        json.beginObject();
        json.name("file").value(terminal.show(finding.file()));
        json.name("line").value(finding.line());
        json.name("column").value(finding.column());
        json.name("offset").value(finding.offset());
        json.name("length").value(finding.length());
        json.name("severity").value(finding.severity().name().toLowerCase(Locale.ROOT));
        json.name("code").value(finding.code());
        json.name("message").value(finding.message());
        if (finding.rule().isPresent()) {
            LocatedFinding.RulePlace rule = finding.rule().get();
            json.name("rule").beginObject();
            json.name("id").value(rule.id().text());
            json.name("file").value(terminal.show(rule.file()));
            json.name("line").value(rule.line());
            if (rule.layer().isPresent()) {
                json.name("layer").value(rule.layer().get());
            }
            json.endObject();
        }
        json.name("mends").beginArray();
        for (TextMend mend : finding.mends()) {
            mend(json, mend);
        }
        json.endArray();
        json.endObject();
    }

    private void mend(JsonWriter json, TextMend mend) throws IOException {
        json.beginObject();
        json.name("label").value(mend.label());
        if (mend.elsewhere().isPresent()) {
            json.name("file").value(terminal.show(mend.elsewhere().get()));
        }
        json.name("edits").beginArray();
        for (TextChange edit : mend.changes()) {
            Json.edit(json, edit);
        }
        json.endArray();
        json.endObject();
    }
}
