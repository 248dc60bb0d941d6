package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Posting;

/** A list's turnout as rows of a table: each entry with what fills it, then what is short and why, what is to be done. */
public final class TurnoutRows {
    /** What stands in the columns. */
    public static final List<String> COLUMNS = List.of("Need", "Filled", "By", "How true", "What is short");

    private final ListTurnout answer;
    private final TurnoutText text;

    private TurnoutRows(ListTurnout answer) {
        this.answer = answer;
        this.text = new TurnoutText(answer);
    }

    /** One row for each entry, in the order of the list, then one for each kind of thing to be told. */
    public static List<Row> of(ListTurnout answer) {
        return new TurnoutRows(answer).all();
    }

    private List<Row> all() {
        Map<Id, List<Requirement>> byEntry = new LinkedHashMap<>();
        answer.needs().forEach(need -> byEntry.computeIfAbsent(need.entry(), id -> new ArrayList<>()).add(need));
        List<Row> rows = new ArrayList<>();
        byEntry.forEach((entry, needs) -> rows.add(entry(entry, needs)));
        section("Short", text.reasons(), true, rows);
        section("Closed by", answer.complete() ? List.of() : closed(), true, rows);
        section("To build", answer.turnout().builds().stream().map(text::build).toList(), false, rows);
        section("To work over", answer.turnout().worked().stream().map(text::worked).toList(), false, rows);
        section("Rests on guesses", answer.turnout().guesses().stream().map(one -> one.pieces() + " "
                + answer.name(one.what())).toList(), false, rows);
        section("To bring", answer.items().stream().map(item -> Math.max(item.wanted(), item.brought()) + " " + item.title()
                + (item.missing() > 0 ? ": " + item.missing() + " that the list does not bring" : "")).toList(), false, rows);
        section("Roll", answer.roll().map(TurnoutText::roll).orElse(List.of()).stream()
                .map(line -> line.replaceFirst("^Roll: ", "")).toList(), answer.roll().map(RollRows::lacking).orElse(0) > 0,
                rows);
        section("Notes", answer.remarks(), false, rows);
        return rows;
    }

    private List<String> closed() {
        List<String> words = new ArrayList<>(List.of(text.closes()));
        words.addAll(answer.closing());
        return words;
    }

    private static void section(String title, List<String> words, boolean lacking, List<Row> rows) {
        if (!words.isEmpty()) {
            rows.add(new Row(List.of(title, "", words.get(0), "", ""), lacking, words.size() == 1 ? List.of()
                    : words.stream().map(one -> Row.of("", "", one)).toList()));
        }
    }

    private Row entry(Id entry, List<Requirement> needs) {
        int wanted = needs.stream().mapToInt(Requirement::count).sum();
        int filled = needs.stream().mapToInt(answer.turnout()::filled).sum();
        List<Row> parts = new ArrayList<>();
        needs.forEach(need -> parts.addAll(need(need)));
        List<Posting> all = answer.turnout().postings().stream().filter(posting -> needs.contains(posting.need())).toList();
        return new Row(List.of(answer.name(entry), filled + " of " + wanted,
                all.stream().map(posting -> posting.count() + " " + answer.name(posting.type())).collect(Collectors.joining(", ")),
                all.stream().map(Posting::truth).max(Truth::compareTo).map(TurnoutRows::truth).orElse(""),
                filled == wanted ? "" : wanted - filled + " short"), filled < wanted, parts);
    }

    private List<Row> need(Requirement need) {
        List<Row> parts = new ArrayList<>();
        for (Posting posting : answer.turnout().postings()) {
            if (posting.need().equals(need)) {
                parts.add(Row.of(wanted(need), posting.count() + " of " + need.count(), answer.name(posting.type()),
                        truth(posting.truth()) + (posting.line().filter(line -> line.leave()).isPresent()
                                ? ", if the opponent agrees" : "")));
            }
        }
        int lacking = need.count() - answer.turnout().filled(need);
        if (lacking > 0) {
            parts.add(new Row(List.of(wanted(need), "0 of " + lacking, "nobody", "", lacking + " short"), true,
                    List.of()));
        }
        return parts;
    }

    private String wanted(Requirement need) {
        return need.anyOf().stream().map(answer::name).collect(Collectors.joining(" or "));
    }

    /** A shape and a word: the fuller the disc, the truer. */
    static String truth(Truth truth) {
        String shape = switch (truth) {
            case EXACT -> "\u25cf";
            case KINDRED -> "\u25d0";
            case STAND_IN -> "\u25cb";
            case CONVERSION -> "\u25c7";
        };
        return shape + " " + TurnoutText.word(truth);
    }
}
