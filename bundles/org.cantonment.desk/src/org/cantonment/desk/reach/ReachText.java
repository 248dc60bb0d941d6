package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.desk.reach.ReachRow.Filled;
import org.cantonment.desk.turnout.TurnoutText;
import org.cantonment.stock.ledger.AsOf;

/** A player's reach in words: for a terminal, and short enough for a chat. */
public final class ReachText {
    /** What is said of a formation for which no unit is to be had. */
    public static final String NO_UNIT = "no unit may stand in it";

    private final ReachAnswer answer;

    /** Of an answer. */
    public ReachText(ReachAnswer answer) {
        this.answer = answer;
    }

    /** "Ombra: 9 of 30 formations can be fielded now, as known after week 7." */
    public String heading() {
        AsOf when = answer.when();
        return answer.title() + ": " + answer.now() + " of " + answer.rows().size() + " formations can be fielded now"
                + (when.week().isPresent() ? ", as known after week " + when.week().getAsInt() : "") + '.';
    }

    /** All of it, nearest first, a line for each formation and what it is filled with. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        for (ReachRow row : answer.rows()) {
            lines.add(row.title() + ", " + row.eraTitle() + ": " + away(row));
            row.least().ifPresent(least -> lines.add("  at least: " + say(least)));
            row.most().filter(most -> !most.equals(row.least().orElse(null))).ifPresent(most ->
                    lines.add("  at most:  " + say(most)));
        }
        return lines;
    }

    private static String away(ReachRow row) {
        return row.least().map(Filled::away).orElse(NO_UNIT) + '.';
    }

    private static String say(Filled filled) {
        return (filled.units().isEmpty() ? "nothing" : filled.units()) + ": " + (filled.away() + (filled.missing().isEmpty() ? "" : ": " + filled.which())) + '.';
    }

    /** The answer for a chat: what can be fielded now, then what is nearest. */
    public String reply() {
        StringBuilder text = new StringBuilder(heading());
        int left = 0;
        for (ReachRow row : answer.rows()) {
            String words = row.least().map(Filled::awayWithMoney).orElse(NO_UNIT);
            String line = " " + row.title() + ", " + row.eraTitle() + ": " + words + '.';
            if (left > 0 || text.length() + line.length() >= TurnoutText.REPLY - " And 999 more.".length()) {
                left++;
            } else {
                text.append(line);
            }
        }
        return left == 0 ? text.toString() : text + " And " + left + " more.";
    }
}
