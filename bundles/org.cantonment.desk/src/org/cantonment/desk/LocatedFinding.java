package org.cantonment.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.text.LineStarts;
import org.cantonment.notation.text.TextFinding;
import org.cantonment.notation.text.TextMend;

/**
 * A finding at its place in a text.
 *
 * @param file     the file
 * @param line     the line, from 1
 * @param column   the column, from 1, in UTF-16 units
 * @param offset   where the place begins in the file's text, from 0, in UTF-16 units
 * @param length   how long the place is, in UTF-16 units; may be 0
 * @param severity how grave it is
 * @param code     stable and dotted; documented in docs/findings.md
 * @param message  one or more complete sentences
 * @param rule     the rule behind it, if there is one
 * @param mends    what would mend it, the best first; a dispensation, which is written in another file, last
 */
public record LocatedFinding(Path file, int line, int column, int offset, int length, Severity severity, String code,
        String message, Optional<RulePlace> rule, List<TextMend> mends) implements Comparable<LocatedFinding> {
    /**
     * Where a rule stands.
     *
     * @param id   the rule
     * @param file its file
     * @param line its line, from 1
     * @param layer what the layer of house rules is called that says it; empty if a book says it that stands over no other
     */
    public record RulePlace(Id id, Path file, int line, Optional<String> layer) {
    }

    private static final int LONGEST = 600;

    private static final Comparator<LocatedFinding> ORDER = Comparator.comparing((LocatedFinding f) -> f.file())
            .thenComparingInt(LocatedFinding::line).thenComparingInt(LocatedFinding::column)
            .thenComparing(LocatedFinding::severity).thenComparing(LocatedFinding::code)
            .thenComparing(LocatedFinding::message).thenComparingInt(LocatedFinding::length);

    public LocatedFinding {
        Objects.requireNonNull(file, "file");
        mends = List.copyOf(mends);
    }

    /** A finding about a file as a whole. */
    static LocatedFinding of(Path file, Severity severity, String code, String message) {
        return new LocatedFinding(file, 1, 1, 0, 0, severity, code, message, Optional.empty(), List.of());
    }

    /** A finding of a text, with its line and column; the rule's place may be null. */
    static LocatedFinding of(Path file, LineStarts lines, TextFinding finding, RulePlace rule) {
        int offset = finding.offset();
        return new LocatedFinding(file, lines.lineOf(offset) + 1, lines.columnOf(offset) + 1, offset,
                finding.length(), finding.severity(), finding.code(), readable(layered(finding.message(), rule)),
                Optional.ofNullable(rule), finding.mends());
    }

    /** The same with one mend more, behind all others. */
    LocatedFinding withMend(TextMend mend) {
        List<TextMend> more = new ArrayList<>(mends);
        more.add(mend);
        return new LocatedFinding(file, line, column, offset, length, severity, code, message, rule, more);
    }

    // Most sentences name the book already.
    private static String layered(String message, RulePlace rule) {
        String layer = rule == null ? "" : rule.layer().orElse("");
        return layer.isEmpty() || message.contains(layer) ? message : message + " So says " + layer + '.';
    }

    // A message may quote what somebody wrote, and nothing keeps that from being a million letters long.
    private static String readable(String message) {
        return message.length() <= LONGEST ? message : message.substring(0, LONGEST - 1) + "\u2026";
    }

    /** By file, line and column, then the gravest first. */
    @Override
    public int compareTo(LocatedFinding other) {
        return ORDER.compare(this, other);
    }
}
