package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.cantonment.desk.checks.ChecksFolder;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.guest.KnownCheck;
import org.cantonment.rules.guest.Origin;
import org.cantonment.rules.guest.ParameterWords;
import org.cantonment.rules.guest.Refusal;

import com.google.gson.stream.JsonWriter;

/** The checks at hand as JSON, as docs/json/checks.schema.json describes it. */
final class ChecksJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-checks-1";

    private ChecksJson() {
    }

    static String write(List<KnownCheck> checks, List<Refusal> refusals, List<ChecksCommand.Use> uses, Terminal terminal) {
        return Json.text(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("folder").value(terminal.show(ChecksFolder.path()));
            json.name("checks").beginArray();
            for (KnownCheck check : checks) {
                check(json, check, terminal);
            }
            json.endArray();
            json.name("refused").beginArray();
            for (Refusal refusal : refusals) {
                json.beginObject();
                origin(json, refusal.origin(), terminal);
                json.name("why").value(refusal.why());
                json.endObject();
            }
            json.endArray();
            json.name("uses").beginArray();
            for (ChecksCommand.Use use : uses) {
                use(json, use);
            }
            json.endArray();
            json.endObject();
        });
    }

    private static void check(JsonWriter json, KnownCheck check, Terminal terminal) throws IOException {
        json.beginObject();
        json.name("name").value(check.name());
        json.name("label").value(check.label());
        json.name("about").value(check.about());
        origin(json, check.origin(), terminal);
        if (check.shutOut().isPresent()) {
            json.name("shutOut").value(check.shutOut().get());
        }
        json.name("parameters").beginArray();
        for (Parameter parameter : check.parameters()) {
            parameter(json, parameter);
        }
        json.endArray();
        json.name("findings").beginArray();
        for (FindingKind kind : check.findings()) {
            json.beginObject();
            json.name("code").value(check.shown(kind));
            json.name("severity").value(kind.severity().name().toLowerCase(Locale.ROOT));
            json.name("about").value(kind.about());
            json.endObject();
        }
        json.endArray();
        json.endObject();
    }

    private static void origin(JsonWriter json, Origin origin, Terminal terminal) throws IOException {
        json.name("plugin").value(origin.plugin());
        json.name("version").value(origin.version());
        if (origin.file().isPresent()) {
            json.name("file").value(terminal.show(origin.file().get()));
        }
    }

    private static void parameter(JsonWriter json, Parameter parameter) throws IOException {
        json.beginObject();
        json.name("name").value(parameter.name());
        json.name("label").value(parameter.label());
        json.name("sort").value(parameter.sort().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        value(json, "least", parameter.least());
        value(json, "most", parameter.most());
        value(json, "preset", parameter.preset());
        json.name("about").value(parameter.about());
        json.endObject();
    }

    private static void value(JsonWriter json, String name, Optional<SettingValue> value) throws IOException {
        if (value.isPresent()) {
            json.name(name).value(ParameterWords.text(value.get()));
        }
    }

    private static void use(JsonWriter json, ChecksCommand.Use use) throws IOException {
        json.beginObject();
        json.name("campaign").value(use.campaign());
        json.name("check").value(use.line().name());
        json.name("findings").beginArray();
        for (Finding finding : use.findings()) {
            json.beginObject();
            json.name("severity").value(finding.severity().name().toLowerCase(Locale.ROOT));
            json.name("code").value(finding.code());
            json.name("message").value(finding.message());
            json.endObject();
        }
        json.endArray();
        json.endObject();
    }
}
