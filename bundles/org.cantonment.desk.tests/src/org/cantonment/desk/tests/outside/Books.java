package org.cantonment.desk.tests.outside;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.notation.text.TextChange;
import org.cantonment.testkit.Project;

/** A folder under resources/outside, opened as the workbench and the command line open it. Nothing in it is written. */
final class Books {
    private static final String PLACE = "bundles/org.cantonment.desk.tests/resources/outside";
    private static final String LIST = ".list";

    private final Path folder;
    private final CampaignDesk desk;

    private Books(Path folder) {
        this.folder = folder;
        this.desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
    }

    static Books of(String name) {
        return new Books(Project.file(PLACE).resolve(name));
    }

    /** Says something else in a book of the folder, as an editor would that has not saved. */
    void retype(String file, String words, String other) {
        Path path = folder.resolve(file);
        String text = desk.text(path).orElseThrow();
        if (!text.contains(words)) {
            throw new IllegalArgumentException(file + " does not say '" + words + "'");
        }
        desk.update(path, text.replace(words, other), CancelToken.NEVER);
    }

    /** What is said of a list: its place, severity and code and the rule's place, each place with its words. */
    List<String> said(String list) {
        return told(snapshot().findings(list(list)));
    }

    /** What is said of books that are no lists. */
    List<String> saidOfBooks() {
        return told(snapshot().findings().stream().filter(f -> !f.file().toString().endsWith(LIST)).toList());
    }

    /** The sentences of what is said of a list, in the order of its lines. */
    List<String> sentences(String list) {
        return snapshot().findings(list(list)).stream().map(LocatedFinding::message).toList();
    }

    /** The labels of what would mend a finding of a list, the best first. */
    List<String> mends(String list, int finding) {
        return snapshot().findings(list(list)).get(finding).mends().stream().map(mend -> mend.label()).toList();
    }

    /** Does what a finding's best mend says, as an editor would that has not saved. */
    void mend(String list, int finding) {
        Path file = list(list);
        StringBuilder text = new StringBuilder(desk.text(file).orElseThrow());
        List<TextChange> changes = new ArrayList<>(
                snapshot().findings(file).get(finding).mends().get(0).changes());
        changes.sort(Comparator.comparingInt(TextChange::offset).reversed());
        changes.forEach(c -> text.replace(c.offset(), c.offset() + c.length(), c.text()));
        desk.update(file, text.toString(), CancelToken.NEVER);
    }

    /** What every list of the folder costs, by its file's name without the ending. */
    Map<String, Long> points() {
        Map<String, Long> all = new TreeMap<>();
        for (Path file : snapshot().files()) {
            String name = file.getFileName().toString();
            if (name.endsWith(LIST)) {
                String list = name.substring(0, name.length() - LIST.length());
                all.put(list, judged(list).verdict().orElseThrow().points());
            }
        }
        return all;
    }

    Judged judged(String list) {
        return snapshot().judged(list(list)).orElseThrow();
    }

    private DeskSnapshot snapshot() {
        return desk.snapshot();
    }

    private Path list(String name) {
        Path file = folder.resolve("lists").resolve(name + LIST);
        if (!snapshot().files().contains(file)) {
            throw new IllegalArgumentException("There is no list " + name);
        }
        return file;
    }

    private List<String> told(List<LocatedFinding> findings) {
        return findings.stream().sorted(Comparator.comparing((LocatedFinding f) -> f.file())
                .thenComparing(LocatedFinding::line).thenComparing(LocatedFinding::code).thenComparing(f ->
                        f.rule().map(LocatedFinding.RulePlace::line).orElse(0))).map(this::told).toList();
    }

    private String told(LocatedFinding finding) {
        String severity = finding.severity().name().toLowerCase(Locale.ROOT);
        return place(finding.file(), finding.line()) + ' ' + severity + ' ' + finding.code()
                + finding.rule().map(rule -> " by " + place(rule.file(), rule.line())).orElse("");
    }

    private String place(Path file, int line) {
        String words = desk.text(file).orElseThrow().lines().skip(line - 1L).findFirst().orElse("");
        return file.getFileName() + ":" + line + " [" + words.replaceFirst("^[ .]*", "") + ']';
    }
}
