package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;

import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.adopting.ListChange;
import org.cantonment.desk.adopting.ListChange.Kind;
import org.cantonment.desk.adopting.ListChange.Standing;
import org.cantonment.desk.adopting.Proposal;

import com.google.gson.stream.JsonWriter;

/** What adopting would do as JSON, as docs/json/adopt.schema.json describes it. */
final class AdoptJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-adopt-1";

    private final Terminal terminal;

    AdoptJson(Terminal terminal) {
        this.terminal = terminal;
    }

    String write(Proposal proposal) {
        return Json.text(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("book").value(proposal.title());
            json.name("file").value(terminal.show(proposal.target()));
            json.name("changed").value(proposal.changed());
            json.name("playedBy").beginArray();
            for (Proposal.Played played : proposal.played()) {
                json.beginObject();
                json.name("campaign").value(played.title());
                json.name("file").value(terminal.show(played.file()));
                json.name("edits").beginArray();
                Json.edit(json, played.change());
                json.endArray();
                json.endObject();
            }
            json.endArray();
            findings(json, "said", proposal.adoption().said());
            json.name("lists").beginArray();
            for (ListChange change : proposal.adoption().changes()) {
                if (change.kind() != Kind.NONE) {
                    list(json, change);
                }
            }
            json.endArray();
            json.name("unchanged").value(proposal.adoption().of(Kind.NONE).size());
            json.endObject();
        });
    }

    private void list(JsonWriter json, ListChange change) throws IOException {
        json.beginObject();
        json.name("file").value(terminal.show(change.file()));
        json.name("title").value(change.title());
        json.name("change").value(change.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        standing(json, "before", change.before());
        standing(json, "after", change.after());
        findings(json, "broken", change.broken());
        findings(json, "cleared", change.cleared());
        json.endObject();
    }

    private static void standing(JsonWriter json, String name, Standing standing) throws IOException {
        json.name(name).beginObject();
        json.name("legal").value(standing.legal());
        OptionalLong points = standing.points();
        if (points.isPresent()) {
            json.name("points").value(points.getAsLong());
        }
        json.endObject();
    }

    private void findings(JsonWriter json, String name, List<LocatedFinding> findings) throws IOException {
        json.name(name).beginArray();
        CheckJson check = new CheckJson(terminal);
        for (LocatedFinding finding : findings) {
            check.finding(json, finding);
        }
        json.endArray();
    }
}
