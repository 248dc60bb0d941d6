package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Fixing;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Build;
import org.cantonment.stock.turnout.Posting;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.ReasonText;
import org.cantonment.stock.turnout.Turnout;
import org.cantonment.stock.turnout.Worked;

/** A list's turnout in words: for a terminal, for a finding, and short enough for a chat. */
public final class TurnoutText {
    /** A reply is shorter than this. */
    public static final int REPLY = 500;

    private final ListTurnout answer;
    private final Turnout turnout;

    /** Of an answer. */
    public TurnoutText(ListTurnout answer) {
        this.answer = answer;
        this.turnout = answer.turnout();
    }

    /** "Ombra, round 5: 38 of 40 pieces stand; as known after week 7." */
    public String heading() {
        return answer.title() + ": " + (turnout.complete() ? "all " + turnout.needed() + " pieces stand"
                : turnout.filled() + " of " + turnout.needed() + " pieces stand, " + turnout.lacking() + " short")
                + when(answer.when()) + '.';
    }

    /** "; as known after week 7", or nothing for now. */
    static String when(AsOf when) {
        if (when.week().isPresent()) {
            return ", as known after week " + when.week().getAsInt();
        }
        return when.day().map(day -> ", with what is there on " + day).orElse("");
    }

    /** All of it, a line for each thing. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        places().forEach(place -> lines.add("  " + place));
        lines.addAll(below());
        return lines;
    }

    /** For each entry who stands there: "Gun troop: 2 Gun wagon, 2 Long gun wagon (kindred); 1 short". */
    public List<String> places() {
        Map<Id, List<Requirement>> byEntry = new LinkedHashMap<>();
        answer.needs().forEach(need -> byEntry.computeIfAbsent(need.entry(), id -> new ArrayList<>()).add(need));
        List<String> places = new ArrayList<>();
        byEntry.forEach((entry, needs) -> {
            List<String> parts = new ArrayList<>();
            int missing = 0;
            for (Requirement need : needs) {
                missing += need.count() - turnout.filled(need);
                turnout.postings().stream().filter(posting -> posting.need().equals(need))
                        .forEach(posting -> parts.add(posting(posting)));
            }
            places.add(answer.name(entry) + ": " + (parts.isEmpty() ? "nobody" : String.join(", ", parts))
                    + (missing > 0 ? "; " + missing + " short" : ""));
        });
        return places;
    }

    /** "2 Long gun wagon (kindred)". */
    public String posting(Posting posting) {
        String truth = posting.truth() == Truth.EXACT ? "" : " (" + word(posting.truth())
                + (posting.line().isPresent() && posting.line().get().leave() ? ", if the opponent agrees" : "") + ")";
        return posting.count() + " " + answer.name(posting.type()) + truth;
    }

    /** "kindred". */
    public static String word(Truth truth) {
        return switch (truth) {
            case EXACT -> "exact";
            case KINDRED -> "kindred";
            case STAND_IN -> "stand-in";
            case CONVERSION -> "worked over";
        };
    }

    private List<String> below() {
        List<String> lines = new ArrayList<>(doing());
        lines.addAll(lacking());
        lines.addAll(resting());
        return lines;
    }

    private List<String> doing() {
        List<String> lines = new ArrayList<>();
        turnout.builds().forEach(build -> lines.add("To build: " + build(build) + "."));
        turnout.worked().forEach(worked -> lines.add("To work over: " + worked(worked) + "."));
        return lines;
    }

    private List<String> lacking() {
        List<String> lines = new ArrayList<>();
        reasons().forEach(reason -> lines.add("Short: " + reason));
        if (!turnout.complete()) {
            lines.add("It is closed by: " + closes() + ".");
            if (!turnout.proven()) {
                lines.add("The best that was found; nothing fills more than " + turnout.bound() + ".");
            }
        }
        lines.addAll(answer.closing());
        return lines;
    }

    private List<String> resting() {
        List<String> lines = new ArrayList<>(rests());
        lines.addAll(items());
        answer.roll().ifPresent(roll -> lines.addAll(roll(roll)));
        answer.remarks().forEach(remark -> lines.add("Note: " + remark));
        return lines;
    }

    /** "2 Carrier frame, each as 3 Carrier, glued for good". */
    public String build(Build build) {
        return build.frames() + " " + answer.name(build.part()) + (build.frames() == 1 ? " as " : ", each as ")
                + answer.name(build.build())
                + (build.rebuilt() ? ", built anew" : "") + (build.fixing() == Fixing.GLUED ? ", glued for good" : "");
    }

    /** "2 Spotter into 1 Officer, 2 times; built first: 4 Spotter". */
    public String worked(Worked worked) {
        return answer.name(worked.conversion().line()) + (worked.times() == 1 ? "" : ", " + worked.times() + " times")
                + (worked.built().isEmpty() ? "" : "; built first: " + worked.built().entrySet().stream()
                        .map(one -> one.getValue() + " " + answer.name(one.getKey())).collect(Collectors.joining(" and ")));
    }

    /** Why it is short, each reason in whole sentences. */
    public List<String> reasons() {
        return turnout.reasons().stream().map(reason -> ReasonText.of(reason, answer::name)).toList();
    }

    /** What would close it, by what the needs name: "2 of Gun wagon or Scout cart". */
    public String closes() {
        return turnout.reasons().stream().map(this::closes).collect(Collectors.joining(" and "));
    }

    String closes(Reason reason) {
        Set<String> types = new LinkedHashSet<>();
        reason.needs().stream().filter(need -> need.count() > turnout.filled(need)).forEach(need -> need.anyOf()
                .forEach(type -> types.add(answer.name(type))));
        return reason.lacking() + " more of " + String.join(" or ", types);
    }

    private List<String> rests() {
        return turnout.guesses().isEmpty() ? List.of() : List.of("This rests on guesses: " + turnout.guesses().stream()
                .map(guess -> guess.pieces() + " " + answer.name(guess.what())).collect(Collectors.joining(", ")) + ".");
    }

    private List<String> items() {
        return answer.items().stream().map(item -> item.missing() == 0
                ? "Brings: " + Math.max(item.wanted(), item.brought()) + " " + item.title() + "."
                : "To bring: " + item.missing() + " " + item.title() + ", which the list does not say: write 'brings "
                        + (item.missing() == 1 ? "" : item.missing() + " ") + item.name() + "'.").toList();
    }

    /** What the roll leaves of it. */
    public static List<String> roll(RollRows roll) {
        List<String> lines = new ArrayList<>();
        for (RollRow row : roll.rows()) {
            String rebuilding = row.rebuild() == 0 ? "" : "; rebuilding " + row.rebuild() + " mends " + (row.rebuild()
                    == row.lacking() ? "it" : "so many");
            lines.add("Roll: " + row.title() + ": " + row.left() + " of " + row.enrolled() + " left (" + row.lost()
                    + " lost, " + row.wounded() + " wounded), " + row.wanted() + " wanted"
                    + (row.lacking() > 0 ? ", " + row.lacking() + " too many" + rebuilding : "") + ".");
        }
        if (roll.rows().stream().anyMatch(row -> row.rebuild() > 0)) {
            lines.add("Roll: the rebuilding costs " + roll.costs() + " of " + roll.funds() + ".");
        }
        return lines;
    }

    /** The answer for a chat. */
    public String reply() {
        StringBuilder text = new StringBuilder(answer.title()).append(": ");
        if (turnout.complete()) {
            text.append("you have it all, ").append(turnout.needed()).append(" pieces");
            int untrue = turnout.needed() - turnout.standing(Truth.EXACT);
            text.append(untrue == 0 ? "." : ", " + untrue + " of them not exact.");
        } else {
            text.append(turnout.lacking()).append(" of ").append(turnout.needed()).append(" pieces short.");
        }
        List<String> more = new ArrayList<>(lacking());
        more.addAll(doing());
        more.addAll(resting());
        for (String line : more) {
            if (text.length() + line.length() + 1 < REPLY) {
                text.append(' ').append(line);
            }
        }
        return text.toString();
    }
}
