package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;

/** How a list stands in all eras, in words: for a terminal, and short enough for a chat. */
public final class ErasText {
    /** A reply is shorter than this. */
    public static final int REPLY = 500;

    private ErasText() {
    }

    /** All of it, a line for each thing. */
    public static List<String> lines(ListEras answer) {
        List<String> lines = new ArrayList<>();
        lines.add(answer.title() + answer.written().map(era -> ", written for " + era.title()).orElse("") + '.');
        if (!answer.owned().known()) {
            lines.add(answer.owned().why());
        }
        lines.addAll(answer.unasked());
        for (EraAnswer era : answer.eras()) {
            lines.add("");
            lines.add(era.title() + ": " + (era.legal() ? "legal" : "not legal") + ", "
                    + total(era.points(), era.limit()) + '.');
            Map<String, Integer> said = new LinkedHashMap<>();
            era.verdict().findings(Severity.BREACH)
                    .forEach(finding -> said.merge(finding.code() + ": " + finding.message(), 1, Integer::sum));
            if (era.lawful()) {
                still(era.objections()).forEach(words -> said.merge(words, 1, Integer::sum));
            } else {
                era.objections().forEach(one -> said.merge(one.finding().code() + ": " + one.finding().message(), 1,
                        Integer::sum));
            }
            said.forEach((words, times) -> lines.add("  " + words + (times == 1 ? "" : " (" + times + " times)")));
            era.atLarge().ifPresent(changes -> changes("Least change", changes, era, lines));
            owned(answer.owned(), era, lines);
        }
        return lines;
    }

    private static void owned(Owned owned, EraAnswer era, List<String> lines) {
        if (!owned.known()) {
            return;
        }
        String with = "With what " + owned.who() + " owns";
        if (era.owned().isEmpty()) {
            lines.add("  " + with + ": all of it can be fielded as it is written.");
        } else if (era.ownedIsSame() && era.owned().get().answers().size() == 1) {
            lines.add("  " + with + ": the same.");
        } else {
            changes(with, era.owned().get(), era, lines);
        }
    }

    private static void changes(String title, Changes changes, EraAnswer era, List<String> lines) {
        if (changes.best().isEmpty()) {
            lines.add("  " + title + ": none. " + changes.proof());
            return;
        }
        for (int i = 0; i < changes.answers().size(); i++) {
            ChangeAnswer answer = changes.answers().get(i);
            lines.add("  " + (i == 0 ? title : "Next best") + ": " + moved(answer) + ", "
                    + total(answer.points(), era.limit()) + " after it." + (i == 0 ? " " + changes.proof() : ""));
            answer.edits().forEach(edit -> lines.add("    " + edit.words() + '.'));
            still(answer.objections()).forEach(words -> lines.add("    " + words));
        }
    }

    /** What checks of others say of a list that is legal by the rules; nothing if they say nothing. */
    public static List<String> still(List<Objection> objections) {
        return objections.stream().map(one -> "Legal by the rules; the check " + one.check() + " still says: "
                + one.finding().message()).distinct().toList();
    }

    /** "66 points moved, 3 units". */
    public static String moved(ChangeAnswer answer) {
        return points(answer.moved()) + " moved, " + answer.units() + (answer.units() == 1 ? " unit" : " units");
    }

    /** "91 of 100 points". */
    public static String total(long points, OptionalInt limit) {
        return limit.isPresent() ? points + " of " + points(limit.getAsInt()) : points(points);
    }

    private static String points(long points) {
        return points == 1 ? "1 point" : points + " points";
    }

    /**
     * The answer for a chat: a sentence or three for each era but the one that the list is written for, which is told only
     * if the list is not legal in it. Eras that find no room are counted.
     */
    public static String reply(ListEras answer) {
        StringBuilder text = new StringBuilder();
        int left = 0;
        for (EraAnswer era : answer.eras()) {
            if (era.written() && era.legal() && answer.eras().size() > 1) {
                continue;
            }
            String part = (text.length() == 0 ? "" : " ") + era.title() + ": " + part(answer.owned(), era);
            if (left > 0 || text.length() + part.length() >= REPLY - " And 99 eras more.".length()) {
                left++;
            } else {
                text.append(part);
            }
        }
        return left == 0 ? text.toString() : text.append(text.length() == 0 ? "Too much to say here; " : " And ")
                .append(left).append(left == 1 ? " era more." : " eras more.").toString();
    }

    private static String part(Owned owned, EraAnswer era) {
        String verdict = era.legal() ? "yes, legal (" + brief(era.points(), era.limit()) + ")."
                : "not yet. " + (era.lawful() ? brief(era.objections()) : why(era.breaches()));
        String least = era.atLarge().map(changes -> " Least change: " + brief(changes, era)).orElse("");
        if (!owned.known()) {
            return verdict + least;
        }
        Optional<Changes> mine = era.owned();
        String own = mine.isEmpty() ? " " + owned.who() + " has all of it." : era.ownedIsSame()
                ? " " + owned.who() + " owns what it takes."
                : " With what " + owned.who() + " owns: " + brief(mine.get(), era);
        return verdict + least + own;
    }

    private static String why(List<Finding> breaches) {
        return shortened(breaches.get(0).message())
                + (breaches.size() == 1 ? "" : " (and " + (breaches.size() - 1) + " more)");
    }

    private static String brief(List<Objection> objections) {
        Objection first = objections.get(0);
        return "Legal by the rules; the check " + first.check() + " still says: " + shortened(first.finding().message())
                + (objections.size() == 1 ? "" : " (and " + (objections.size() - 1) + " more)");
    }

    private static String shortened(String sentence) {
        return sentence.length() <= 90 ? sentence : sentence.substring(0, 89) + "\u2026";
    }

    private static String brief(Changes changes, EraAnswer era) {
        return changes.best().map(best -> best.brief() + " (" + brief(best.points(), era.limit()) + ")"
                + (changes.proven() ? "." : ", the best found.")
                + (best.objections().isEmpty() ? "" : " " + brief(best.objections()))).orElse("none found.");
    }

    private static String brief(long points, OptionalInt limit) {
        return limit.isPresent() ? points + " of " + limit.getAsInt() : Long.toString(points);
    }
}
