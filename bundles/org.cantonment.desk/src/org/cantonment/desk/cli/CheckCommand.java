package org.cantonment.desk.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.files.BookFiles;

/** {@code check PATH…}: what is wrong in these books. */
final class CheckCommand {
    private final Terminal terminal;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    int run(List<String> words, boolean json) {
        Paths paths = new Paths(terminal);
        List<Path> existing = words.stream().map(paths::bookOrFolder).toList();
        Map<Path, List<LocatedFinding>> byFile = new TreeMap<>();
        for (DeskScope scope : Targets.of(existing)) {
            DeskSnapshot snapshot = terminal.open(scope).snapshot();
            for (Path file : snapshot.files()) {
                byFile.putIfAbsent(file, snapshot.findings(file));
            }
        }
        if (byFile.isEmpty()) {
            throw new WrongCall("There are no books in " + existing.stream().map(p -> "'" + terminal.show(p) + "'")
                    .collect(Collectors.joining(", ")) + ": no file there ends in " + BookFiles.spoken() + ".");
        }
        List<LocatedFinding> findings = new ArrayList<>();
        byFile.values().forEach(findings::addAll);
        int lists = (int) byFile.keySet().stream().filter(f -> BookFiles.extension(f).equals("list")).count();
        CheckSummary summary = CheckSummary.of(byFile.size(), lists, findings);
        if (json) {
            terminal.answer(new CheckJson(terminal).write(findings, summary));
        } else {
            findings.forEach(finding -> terminal.answer(line(finding)));
            terminal.say(summary.sentence());
        }
        if (findings.stream().anyMatch(f -> f.code().equals(CampaignDesk.UNREAD))) {
            return Exit.WRONG;
        }
        return summary.breaches() > 0 ? Exit.BREACH : Exit.FINE;
    }

    private String line(LocatedFinding finding) {
        return terminal.show(finding.file()) + ":" + finding.line() + ":" + finding.column() + ": "
                + finding.severity().name().toLowerCase(Locale.ROOT) + " " + finding.code() + ": "
                + Plain.line(finding.message());
    }
}
