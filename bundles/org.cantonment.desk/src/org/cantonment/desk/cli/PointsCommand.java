package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;

import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.domain.force.Contingent;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.muster.Tally;
import org.cantonment.rules.muster.TallyLine;
import org.cantonment.rules.muster.TallyPart;

/** {@code points LIST…}: what a list costs, opened into its parts. */
final class PointsCommand {
    private static final int NUMBER = 7;

    private final Terminal terminal;

    PointsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    int run(List<String> words) {
        Paths paths = new Paths(terminal);
        List<Path> lists = words.stream().map(paths::list).toList();
        int code = Exit.FINE;
        for (DeskScope scope : Targets.of(lists)) {
            DeskSnapshot snapshot = terminal.open(scope).snapshot();
            for (Path file : snapshot.files()) {
                code = Math.max(code, list(file, snapshot));
            }
        }
        return code;
    }

    private int list(Path file, DeskSnapshot snapshot) {
        Judged judged = snapshot.judged(file).orElse(null);
        if (judged == null || judged.verdict().isEmpty()) {
            String why = judged == null || judged.findings().isEmpty() ? "It cannot be read as a list."
                    : judged.findings().get(0).message();
            terminal.say(terminal.show(file) + ": its points cannot be told. " + Plain.line(why));
            return Exit.WRONG;
        }
        Verdict verdict = judged.verdict().get();
        OptionalInt limit = judged.about().situation().points();
        terminal.answer(terminal.show(file) + ": " + verdict.points() + " points"
                + (limit.isPresent() ? " of " + limit.getAsInt() : ""));
        tally(verdict.tally());
        List<Contingent> contingents = judged.about().list().contingents();
        for (int i = 0; i < contingents.size(); i++) {
            Tally tally = verdict.contingents().get(i);
            terminal.answer(number(tally.points()) + "  contingent " + Plain.line(contingents.get(i).title()));
            tally(tally);
        }
        return Exit.FINE;
    }

    private void tally(Tally tally) {
        for (TallyLine line : tally.lines()) {
            terminal.answer(number(line.points()) + "  " + (line.count() == 1 ? "" : line.count() + " ")
                    + Plain.line(line.title()));
            for (TallyPart part : line.parts()) {
                terminal.answer(" ".repeat(NUMBER + 2) + number(part.points()) + "  " + Plain.line(part.words()));
            }
        }
        if (tally.unpriced()) {
            terminal.answer(" ".repeat(NUMBER + 2) + "Some of it has no price in the rules.");
        }
    }

    private static String number(long points) {
        String text = Long.toString(points);
        return " ".repeat(Math.max(0, NUMBER - text.length())) + text;
    }
}
