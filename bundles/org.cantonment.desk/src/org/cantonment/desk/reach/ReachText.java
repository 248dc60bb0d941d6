package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.desk.reach.ReachRow.Filled;
import org.cantonment.desk.turnout.TurnoutText;
import org.cantonment.stock.ledger.AsOf;

/** A player's reach in words: for a terminal, and short enough for a chat. */
public final class ReachText {
    /** What is said of a formation for which no unit is to be had. */
    public static final String NO_UNIT = "no unit may stand in it";
    private static final String INDENT = "            ";

    private final ReachAnswer answer;

    /** Of an answer. */
    public ReachText(ReachAnswer answer) {
        this.answer = answer;
    }

    /** "Ombra: 9 of 30 formations can be fielded now, as known after week 7." */
    public String heading() {
        return answer.title() + ": " + answer.now() + " of " + answer.rows().size() + " formations can be fielded now"
                + asKnown(answer.when()) + '.';
    }

    static String asKnown(AsOf when) {
        return when.week().isPresent() ? ", as known after week " + when.week().getAsInt() : "";
    }

    /** By what prices money is told, and what is left out, or why none is; empty where nobody asked. */
    public Optional<String> prices() {
        return answer.noMoney().map(why -> "No money is told. " + why).or(() -> answer.shops().map(shops ->
                "Money by prices of " + shops.day() + " (" + shops.why() + ")." + shops.leftOut().map(" "::concat).orElse("")));
    }

    /** All of it, nearest first, a line for each formation and what it is filled with. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        prices().ifPresent(lines::add);
        for (ReachRow row : answer.rows()) {
            lines.add(row.title() + ", " + row.eraTitle() + ": " + row.least().map(Filled::awayWithMoney).orElse(NO_UNIT) + '.');
            row.least().ifPresent(least -> say("  at least: ", least, lines));
            row.most().filter(most -> !most.equals(row.least().orElse(null))).ifPresent(most ->
                    say("  at most:  ", most, lines));
        }
        return lines;
    }

    private static void say(String how, Filled filled, List<String> lines) {
        lines.add(how + (filled.units().isEmpty() ? "nothing" : filled.units()) + ": " + filled.away()
                + (filled.missing().isEmpty() ? "" : ": " + filled.which()) + '.');
        filled.price().ifPresent(price -> lines.add(INDENT + price.words()));
    }

    /** The answer for a chat: what can be fielded now, with the eras if not in all; then what is nearest. */
    public String reply() {
        List<ReachRow> rows = answer.rows().stream().filter(row -> !now(row)).toList();
        List<String> now = nowInWords();
        StringBuilder text = new StringBuilder(heading());
        if (!now.isEmpty()) {
            String all = " Now: " + String.join(", ", now) + '.';
            text.append(all.length() < TurnoutText.REPLY / 2 ? all : "");
        }
        int left = 0;
        for (ReachRow row : rows) {
            String line = " " + row.title() + ", " + row.eraTitle() + ": "
                    + row.least().map(ReachText::nearest).orElse(NO_UNIT) + '.';
            if (left > 0 || text.length() + line.length() >= TurnoutText.REPLY - " And 999 more.".length()) {
                left++;
            } else {
                text.append(line);
            }
        }
        return left == 0 ? text.toString() : text + " And " + left + " more.";
    }

    private static boolean now(ReachRow row) {
        return row.least().filter(least -> least.lacking() == 0).isPresent();
    }

    private List<String> nowInWords() {
        Map<String, List<String>> eras = new LinkedHashMap<>();
        answer.rows().stream().filter(ReachText::now).forEach(row ->
                eras.computeIfAbsent(row.title(), title -> new ArrayList<>()).add(row.eraTitle()));
        long all = answer.rows().stream().map(ReachRow::era).distinct().count();
        return eras.entrySet().stream().map(one -> one.getKey() + (one.getValue().size() == all ? ""
                : " (" + String.join(", ", one.getValue()) + ")")).toList();
    }

    private static String nearest(Filled filled) {
        return filled.awayWithMoney() + (filled.missing().isEmpty() ? "" : ": " + filled.which());
    }
}
