package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.cantonment.stock.eras.Army;
import org.cantonment.stock.eras.Carry;
import org.cantonment.stock.eras.EraAnswer;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.eras.UnitAnswer;

/** What a shelf is good for in every era, in words: for a terminal, and short enough for a chat. */
public final class ShelfText {
    private static final int HUNDRED = 100;

    private final ShelfAnswer answer;

    /** Of an answer. */
    public ShelfText(ShelfAnswer answer) {
        this.answer = answer;
    }

    /** Whose shelf it is, and by which rules. */
    public String heading() {
        return "The shelf of " + answer.owner() + ", by " + answer.rules() + ".";
    }

    /** All of it, a line for each thing. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        for (EraAnswer era : answer.eras().eras()) {
            lines.add("");
            lines.add(answer.title(era.era()) + ": " + greatest(era.army()) + "; " + era.pieces() + " pieces of use.");
            era.army().units().forEach(fielded -> lines.add("  " + fielded(fielded) + ", "
                    + fielded.points() * (long) fielded.count() + " points"));
            line("  Can be fielded, one kind at a time: ", can(era), lines);
            line("  Not to be fielded: ", cannot(era), lines);
        }
        if (answer.eras().eras().size() > 1) {
            lines.add("");
            lines.add("What carries over:");
            for (Carry carry : answer.eras().carries()) {
                if (!carry.from().equals(carry.to())) {
                    lines.add("  " + answer.title(carry.from()) + " to " + answer.title(carry.to()) + ": " + carried(carry));
                }
            }
        }
        return lines;
    }

    private static void line(String lead, String words, List<String> lines) {
        if (!words.isEmpty()) {
            lines.add(lead + words + '.');
        }
    }

    /** "at most 213 points at once". */
    public String greatest(Army army) {
        if (army.units().isEmpty()) {
            return "nothing can be fielded";
        }
        String more = army.proven() ? "" : " that were found, and no more than " + army.bound();
        return "at most " + army.points() + " points at once" + more
                + army.side().map(side -> ", " + answer.title(side)).orElse("");
    }

    /** "2 Tread troop of 5", or "Staff". */
    public String fielded(Fielded fielded) {
        return (fielded.count() == 1 ? "" : fielded.count() + " ") + answer.title(fielded.unit())
                + (fielded.strength() == 1 ? "" : " of " + fielded.strength());
    }

    /** The army in one line. */
    public String army(Army army) {
        return army.units().stream().map(this::fielded).collect(Collectors.joining(", "));
    }

    /** "Tread troop 4 times, Staff". */
    public String can(EraAnswer era) {
        return era.units().stream().filter(unit -> unit.copies() > 0 && unit.copies() < UnitAnswer.ENDLESS)
                .map(unit -> answer.title(unit.unit()) + (unit.copies() == 1 ? "" : " " + unit.copies() + " times"))
                .collect(Collectors.joining(", "));
    }

    /** "Gun troop (2 pieces short)", those that lack least first. */
    public String cannot(EraAnswer era) {
        return era.units().stream().filter(unit -> unit.copies() == 0)
                .sorted((a, b) -> Integer.compare(a.lacking(), b.lacking()))
                .map(unit -> answer.title(unit.unit()) + " (" + unit.lacking() + " short)")
                .collect(Collectors.joining(", "));
    }

    /** "31 of 40 pieces (77 percent), 120 of 160 points (75 percent)". */
    public static String carried(Carry carry) {
        return share(carry.pieces(), carry.ofPieces(), "pieces") + ", " + share(carry.points(), carry.ofPoints(), "points");
    }

    private static String share(int some, int all, String what) {
        return some + " of " + all + ' ' + what + (all == 0 ? "" : " (" + some * (long) HUNDRED / all + " percent)");
    }

    /** The answer for a chat: each era with its greatest army. Eras that find no room are counted. */
    public String reply() {
        StringBuilder text = new StringBuilder();
        int left = 0;
        for (EraAnswer era : answer.eras().eras()) {
            String units = army(era.army());
            String part = (text.length() == 0 ? "" : " ") + answer.title(era.era()) + ": " + greatest(era.army())
                    + (units.isEmpty() || units.length() > 120 ? "" : ", " + units) + '.';
            if (left > 0 || text.length() + part.length() >= ErasText.REPLY - " And 99 eras more.".length()) {
                left++;
            } else {
                text.append(part);
            }
        }
        return left == 0 ? text.toString() : text.append(" And ").append(left).append(left == 1 ? " era" : " eras")
                .append(" more.").toString();
    }
}
