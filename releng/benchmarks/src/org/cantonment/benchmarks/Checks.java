package org.cantonment.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.notation.Document;
import org.cantonment.notation.Library;
import org.cantonment.notation.Notation;
import org.cantonment.rules.Judge;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** A list of 1,000 lines judged by 500 checks, half fixed forms and half expressions; beside no checks at all. */
final class Checks {
    private static final int KINDS = 20;
    private static final int UNITS = 100;
    private static final int SQUADS = 50;
    private static final int IN_SQUAD = 19;
    private static final int CHECKS = 500;
    private static final int WARM = 300;
    private static final int RUNS = 201;

    private Checks() {
    }

    static List<Row> run() {
        Library library = Notation.get().newLibrary();
        Ruling checked = ruling(library, "Checked", CHECKS);
        Ruling plain = ruling(library, "Plain", 0);
        ForceList list = list(library, "Checked");
        ForceList same = list(library, "Plain");
        Situation situation = Situation.BARE.withPoints(1_000_000, java.util.Optional.empty()).withBefore(list);
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        for (int i = 0; i < WARM + RUNS; i++) {
            long begin = System.nanoTime();
            Verdict verdict = Judge.judge(checked, list, situation);
            long judged = System.nanoTime();
            Judge.judge(plain, same, situation);
            if (i >= WARM) {
                ours.add(judged - begin);
                reference.add(System.nanoTime() - judged);
            }
            if (!verdict.legal()) {
                throw new IllegalStateException(verdict.findings().get(0).message());
            }
        }
        return List.of(Row.at(0.5, "500 checks on a list of 1,000 lines, median, ms", ours, reference),
                Row.at(0.95, "500 checks on a list of 1,000 lines, 95th percentile, ms", ours, reference));
    }

    private static Ruling ruling(Library library, String name, int checks) {
        StringBuilder text = new StringBuilder("rules " + name + "\nera Only\n");
        for (int kind = 0; kind < KINDS; kind++) {
            text.append("kind Kind-").append(kind).append('\n');
        }
        for (int unit = 0; unit < UNITS; unit++) {
            text.append("unit Unit-").append(unit).append("\n  . is Kind-").append(unit % KINDS)
                    .append("\n  . strength 1 to 9 for 3 points each\n  . option Mast, at most 3, for 1 point\n");
        }
        text.append("formation Squad\n  . billet All 0 to 40 of ");
        for (int kind = 0; kind < KINDS; kind++) {
            text.append(kind == 0 ? "" : ", ").append("Kind-").append(kind);
        }
        text.append('\n');
        for (int check = 0; check < checks; check++) {
            text.append("limit Limit-").append(check).append("\n").append(check(check, "Kind-" + check % KINDS,
                    "Unit-" + check % UNITS));
        }
        Document document = library.put(Path.of("/bench/" + name + ".rules"), text.toString());
        library.linkAnew();
        if (!document.findings().isEmpty()) {
            throw new IllegalStateException(document.findings().get(0).message());
        }
        return RulingCompiler.compile(List.of(document.meaning(RuleSet.class).orElseThrow()), Occasion.UNKNOWN);
    }

    private static String check(int check, String kind, String unit) {
        return switch (check % 10) {
            case 0 -> "  . at most 900 of " + kind + "\n";
            case 1 -> "  . at most 90 percent of points used on " + kind + "\n";
            case 2 -> "  . at most 90 of " + unit + " per 1 of Squad\n";
            case 3 -> "  . at most 39 of " + kind + " in each Squad\n";
            case 4 -> "  . taking " + unit + " needs at least 1 of " + kind + "\n";
            case 5 -> "  . let A be count of " + kind + "\n  . always A divided by 4 rounded up is at most A plus 3\n";
            case 6 -> "  . always points of " + kind + " is at most 90 percent of points used and count of " + unit + " is at least 0\n";
            case 7 -> "  . always count of " + kind + " gone is 0 or options on " + kind + " is at least 1\n";
            case 8 -> "  . always strength of " + unit + " is at most strength of " + kind + "\n";
            default -> "  . always each Squad has count of " + kind + " is at most 39\n";
        };
    }

    private static ForceList list(Library library, String rules) {
        StringBuilder text = new StringBuilder("list " + rules + "-List under " + rules + " in Only\n");
        for (int squad = 0; squad < SQUADS; squad++) {
            text.append("Squad\n");
            for (int line = 0; line < IN_SQUAD; line++) {
                text.append("  . Unit-").append((squad * IN_SQUAD + line) % UNITS).append(" of ").append(1 + line % 9)
                        .append(line % 4 == 0 ? ", 2 Mast" : "").append('\n');
            }
        }
        Document document = library.put(Path.of("/bench/" + rules + ".list"), text.toString());
        library.linkAnew();
        return document.meaning(ForceList.class).orElseThrow();
    }
}
