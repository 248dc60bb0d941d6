package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.desk.shopping.Cash;
import org.cantonment.desk.turnout.TurnoutText;

/** What boxes would bring within reach, in words: for a terminal, and short enough for a chat. */
public final class BoxesText {
    private final BoxesAnswer answer;

    /** Of an answer. */
    public BoxesText(BoxesAnswer answer) {
        this.answer = answer;
    }

    /** "Ombra: 7 of 94 boxes on sale bring more within reach by themselves, by prices of 2031-11-03 (as asked)." */
    public String heading() {
        int count = answer.rows().size();
        return answer.title() + ": " + (count == 0 ? "none" : count) + " of " + answer.boxes() + " boxes on sale "
                + (count > 1 ? "bring more within reach by themselves" : "brings more within reach by itself")
                + ReachText.asKnown(answer.when()) + ", by prices of " + answer.shops().day() + " (" + answer.shops().why() + ").";
    }

    /** All of it, those first that open most for their money. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        answer.shops().leftOut().ifPresent(lines::add);
        for (BoxRow row : answer.rows()) {
            lines.add(row.name() + ", " + Cash.text(row.price()) + " from " + row.seller() + ": " + row.opened().size()
                    + " more.");
            row.words().forEach(words -> lines.add("  " + words + "."));
        }
        return lines;
    }

    /** The answer for a chat. */
    public String reply() {
        StringBuilder text = new StringBuilder(heading());
        int left = 0;
        for (BoxRow row : answer.rows()) {
            String line = " " + row.name() + ", " + Cash.text(row.price()) + ": " + String.join("; ", row.words()) + '.';
            if (left > 0 || text.length() + line.length() >= TurnoutText.REPLY - " And 999 more.".length()) {
                left++;
            } else {
                text.append(line);
            }
        }
        return left == 0 ? text.toString() : text + " And " + left + " more.";
    }
}
