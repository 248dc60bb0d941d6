package org.cantonment.desk.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.shopping.Closing;
import org.cantonment.desk.turnout.EveningAnswer;
import org.cantonment.desk.turnout.EveningText;
import org.cantonment.desk.turnout.Fielding.Shared;
import org.cantonment.desk.turnout.ItemRow;
import org.cantonment.desk.turnout.ListTurnout;
import org.cantonment.desk.turnout.RollRow;
import org.cantonment.desk.turnout.RollRows;
import org.cantonment.desk.turnout.TurnoutText;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.session.Gap;
import org.cantonment.stock.session.Lent;
import org.cantonment.stock.turnout.Build;
import org.cantonment.stock.turnout.Guess;
import org.cantonment.stock.turnout.Posting;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.cantonment.stock.turnout.Worked;

import com.google.gson.stream.JsonWriter;

/** Turnouts as JSON, as docs/json/turnout.schema.json describes it. */
final class TurnoutJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-turnout-1";

    private final Terminal terminal;
    private final DeskSnapshot snapshot;
    private final Optional<Closing> closing;

    /** @param closing what to buy where something is short */
    TurnoutJson(Terminal terminal, DeskSnapshot snapshot, Optional<Closing> closing) {
        this.terminal = terminal;
        this.snapshot = snapshot;
        this.closing = closing;
    }

    String one(ListTurnout answer) {
        return write(List.of(answer), json -> { });
    }

    String shared(Shared shared) {
        return write(shared.lists(), json -> {
            json.name("shared").beginObject();
            json.name("lacking").value(shared.together().lacking());
            json.name("bound").value(shared.together().bound());
            json.name("proven").value(shared.together().proven());
            builds(json, shared.lists().get(0), shared.builds());
            json.endObject();
        });
    }

    String evening(EveningAnswer answer) {
        return write(answer.lists(), json -> {
            json.name("evening").beginObject();
            json.name("session").value(answer.session());
            json.name("round").value(answer.round());
            json.name("lacking").value(answer.evening().lacking());
            json.name("proven").value(answer.evening().proven());
            json.name("fewestLenders").value(answer.evening().fewest());
            json.name("promised").beginArray();
            for (String promise : answer.promised()) {
                json.value(promise);
            }
            json.endArray();
            json.name("loans").beginArray();
            for (Lent lent : answer.evening().loans()) {
                json.beginObject();
                json.name("from").value(answer.who(lent.from()));
                json.name("to").value(answer.who(lent.to()));
                json.name("piece").value(lent.type().name());
                json.name("count").value(lent.count());
                json.endObject();
            }
            json.endArray();
            json.name("gaps").beginArray();
            List<String> words = new EveningText(answer, List.of()).gaps();
            for (int i = 0; i < words.size(); i++) {
                Gap gap = answer.evening().gaps().get(i);
                reason(json, "together", gap.needed(), gap.there(), gap.lacking(), words.get(i));
            }
            json.endArray();
            json.name("leftOut").beginArray();
            for (String who : answer.missing()) {
                json.value(who);
            }
            json.endArray();
            json.endObject();
        });
    }

    private String write(List<ListTurnout> lists, Json.Writing more) {
        return Json.text(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            more.to(json);
            if (closing.isPresent()) {
                closing(json, closing.get());
            }
            json.name("lists").beginArray();
            for (ListTurnout list : lists) {
                list(json, list);
            }
            json.endArray();
            json.endObject();
        });
    }

    private static void closing(JsonWriter json, Closing closing) throws IOException {
        json.name("closing").beginObject();
        if (closing.shops().isPresent()) {
            PlanJson plans = new PlanJson(json, closing.shops().get());
            plans.shops();
            if (closing.plan().isPresent()) {
                json.name("plan");
                plans.plan(closing.plan().get());
            }
            json.name("impossible").value(closing.answer().orElseThrow().impossible());
            plans.findings("findings", closing.findings());
        }
        json.name("words").beginArray();
        for (String line : closing.words()) {
            json.value(line);
        }
        json.endArray();
        json.endObject();
    }

    private void list(JsonWriter json, ListTurnout answer) throws IOException {
        Turnout turnout = answer.turnout();
        json.beginObject();
        json.name("file").value(snapshot.file(answer.list()).map(terminal::show).orElse("."));
        json.name("title").value(answer.title());
        json.name("owner").value(answer.owner());
        if (answer.when().week().isPresent()) {
            json.name("week").value(answer.when().week().getAsInt());
        }
        if (answer.when().day().isPresent()) {
            json.name("day").value(answer.when().day().get().toString());
        }
        json.name("needed").value(turnout.needed());
        json.name("filled").value(turnout.filled());
        json.name("bound").value(turnout.bound());
        json.name("proven").value(turnout.proven());
        json.name("truest").value(turnout.truest());
        json.name("needs").beginArray();
        for (Requirement need : answer.needs()) {
            need(json, answer, need);
        }
        json.endArray();
        builds(json, answer, turnout.builds());
        rest(json, answer);
        json.endObject();
    }

    private static void need(JsonWriter json, ListTurnout answer, Requirement need) throws IOException {
        json.beginObject();
        json.name("entry").value(answer.name(need.entry()));
        json.name("count").value(need.count());
        json.name("anyOf").beginArray();
        for (Id type : need.anyOf()) {
            json.value(type.name());
        }
        json.endArray();
        json.name("filled").value(answer.turnout().filled(need));
        json.name("by").beginArray();
        for (Posting posting : answer.turnout().postings()) {
            if (posting.need().equals(need)) {
                json.beginObject();
                json.name("piece").value(posting.type().name());
                json.name("count").value(posting.count());
                json.name("truth").value(truth(posting.truth()));
                json.name("leave").value(posting.line().filter(line -> line.leave()).isPresent());
                json.endObject();
            }
        }
        json.endArray();
        json.endObject();
    }

    private static String truth(Truth truth) {
        return truth.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void builds(JsonWriter json, ListTurnout names, List<Build> builds) throws IOException {
        json.name("builds").beginArray();
        for (Build build : builds) {
            json.beginObject();
            json.name("part").value(build.part().name());
            json.name("as").value(names.name(build.build()));
            json.name("frames").value(build.frames());
            json.name("rebuilt").value(build.rebuilt());
            json.name("fixing").value(build.fixing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.endObject();
        }
        json.endArray();
    }

    private static void rest(JsonWriter json, ListTurnout answer) throws IOException {
        Turnout turnout = answer.turnout();
        json.name("conversions").beginArray();
        for (Worked worked : turnout.worked()) {
            json.beginObject();
            json.name("words").value(answer.name(worked.conversion().line()));
            json.name("times").value(worked.times());
            json.name("built").beginArray();
            for (Map.Entry<Id, Integer> built : worked.built().entrySet()) {
                json.beginObject();
                json.name("what").value(built.getKey().name());
                json.name("pieces").value(built.getValue());
                json.endObject();
            }
            json.endArray();
            json.endObject();
        }
        json.endArray();
        json.name("guesses").beginArray();
        for (Guess guess : turnout.guesses()) {
            json.beginObject();
            json.name("what").value(guess.what().name());
            json.name("pieces").value(guess.pieces());
            json.endObject();
        }
        json.endArray();
        json.name("reasons").beginArray();
        List<String> words = new TurnoutText(answer).reasons();
        for (int i = 0; i < words.size(); i++) {
            Reason reason = turnout.reasons().get(i);
            boolean block = reason instanceof Reason.Block;
            int needed = block ? ((Reason.Block) reason).needed()
                    : reason.needs().stream().mapToInt(Requirement::count).sum();
            reason(json, kind(reason), needed, needed - reason.lacking(), reason.lacking(), words.get(i));
        }
        json.endArray();
        json.name("items").beginArray();
        for (ItemRow item : answer.items()) {
            json.beginObject();
            json.name("item").value(item.name());
            json.name("wanted").value(item.wanted());
            json.name("brought").value(item.brought());
            json.endObject();
        }
        json.endArray();
        roll(json, answer.roll());
        json.name("remarks").beginArray();
        for (String remark : answer.remarks()) {
            json.value(remark);
        }
        json.endArray();
    }

    private static void reason(JsonWriter json, String kind, int needed, int there, int lacking, String words)
            throws IOException {
        json.beginObject();
        json.name("kind").value(kind);
        json.name("needed").value(needed);
        json.name("there").value(there);
        json.name("lacking").value(lacking);
        json.name("words").value(words);
        json.endObject();
    }

    private static String kind(Reason reason) {
        return reason instanceof Reason.Block ? "block" : reason instanceof Reason.InFrames ? "frames"
                : reason instanceof Reason.OneMeaning ? "one-meaning" : "search";
    }

    private static void roll(JsonWriter json, Optional<RollRows> roll) throws IOException {
        json.name("roll").beginArray();
        for (RollRow row : roll.map(RollRows::rows).orElse(List.of())) {
            json.beginObject();
            json.name("piece").value(row.title());
            json.name("enrolled").value(row.enrolled());
            json.name("lost").value(row.lost());
            json.name("wounded").value(row.wounded());
            json.name("wanted").value(row.wanted());
            json.name("lacking").value(row.lacking());
            json.name("rebuild").value(row.rebuild());
            json.endObject();
        }
        json.endArray();
    }
}
