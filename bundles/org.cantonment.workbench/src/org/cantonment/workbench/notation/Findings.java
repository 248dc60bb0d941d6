package org.cantonment.workbench.notation;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.cantonment.desk.LocatedFinding;
import org.cantonment.editor.api.Elsewhere;
import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Fix;
import org.cantonment.editor.api.Rule;
import org.cantonment.editor.api.Severity;
import org.cantonment.editor.api.TextChange;
import org.cantonment.notation.text.TextFinding;
import org.cantonment.notation.text.TextMend;

/** The desk's and the notation's findings as the editor's. */
final class Findings {

    private Findings() {
    }

    static Finding of(TextFinding finding) {
        return new Finding(severity(finding.severity()), finding.code(), finding.message(),
                finding.rule().map(id -> new Rule(id.card().text(), "", 0)).orElse(Rule.NONE), advice(finding.mends()), finding.offset(),
                finding.length(), fixes(finding.mends(), none -> Optional.empty()));
    }

    /** @param texts the texts of other files that mends may change */
    static Finding of(LocatedFinding finding, Function<Path, Optional<String>> texts) {
        return new Finding(severity(finding.severity()), finding.code(), finding.message(),
                finding.rule().map(Findings::rule).orElse(Rule.NONE), advice(finding.mends()), finding.offset(),
                finding.length(), fixes(finding.mends(), texts));
    }

    private static Rule rule(LocatedFinding.RulePlace place) {
        return new Rule(place.id().card().text(), place.file().toUri().toString(), place.line());
    }

    private static Severity severity(org.cantonment.domain.finding.Severity severity) {
        return switch (severity) {
            case BREACH -> Severity.BREACH;
            case CAUTION -> Severity.CAUTION;
            case NOTE -> Severity.NOTE;
        };
    }

    /** A mend that no edit of this book makes is said instead. */
    private static String advice(List<TextMend> mends) {
        return mends.stream().filter(mend -> mend.changes().isEmpty()).map(TextMend::label)
                .collect(Collectors.joining("; "));
    }

    private static List<Fix> fixes(List<TextMend> mends, Function<Path, Optional<String>> texts) {
        List<Fix> fixes = new ArrayList<>();
        for (TextMend mend : mends) {
            Optional<Elsewhere> elsewhere = mend.elsewhere().flatMap(file -> texts.apply(file)
                    .map(text -> new Elsewhere(file.toUri().toString(), text)));
            if (mend.here() || elsewhere.isPresent()) {
                fixes.add(new Fix(mend.label(), changes(mend), elsewhere));
            }
        }
        return fixes;
    }

    /** The same edits for the editor. */
    static List<TextChange> changes(TextMend mend) {
        return mend.changes().stream().map(change -> new TextChange(change.offset(), change.length(), change.text()))
                .toList();
    }
}
