package org.cantonment.desk.cli;

import java.util.List;

import org.cantonment.desk.LocatedFinding;
import org.cantonment.domain.finding.Severity;

/** How much was checked and found. */
record CheckSummary(int files, int lists, int breaches, int cautions, int notes) {
    static CheckSummary of(int files, int lists, List<LocatedFinding> findings) {
        return new CheckSummary(files, lists, count(findings, Severity.BREACH), count(findings, Severity.CAUTION),
                count(findings, Severity.NOTE));
    }

    private static int count(List<LocatedFinding> findings, Severity severity) {
        return (int) findings.stream().filter(f -> f.severity() == severity).count();
    }

    /** One sentence for a person. */
    String sentence() {
        return counted(files, "file", "files") + ": " + counted(breaches, "breach", "breaches") + ", "
                + counted(cautions, "caution", "cautions") + ", " + counted(notes, "note", "notes") + ".";
    }

    private static String counted(int n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }
}
