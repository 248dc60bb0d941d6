package org.cantonment.workbench.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.cantonment.desk.LocatedFinding;
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
                finding.length(), fixes(finding.mends()));
    }

    static Finding of(LocatedFinding finding) {
        return new Finding(severity(finding.severity()), finding.code(), finding.message(),
                finding.rule().map(Findings::rule).orElse(Rule.NONE), advice(finding.mends()), finding.offset(),
                finding.length(), fixes(finding.mends()));
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

    private static List<Fix> fixes(List<TextMend> mends) {
        List<Fix> fixes = new ArrayList<>();
        for (TextMend mend : mends) {
            if (!mend.changes().isEmpty()) {
                fixes.add(new Fix(mend.label(), mend.changes().stream()
                        .map(change -> new TextChange(change.offset(), change.length(), change.text())).toList()));
            }
        }
        return fixes;
    }
}
