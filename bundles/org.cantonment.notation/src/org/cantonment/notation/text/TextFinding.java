package org.cantonment.notation.text;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;

/**
 * A finding at its place in one text.
 *
 * @param offset   where it begins, in UTF-16 units from 0
 * @param length   how much it covers, at least 1 unless the text is empty there
 * @param severity breach, caution or note
 * @param code     the stable code
 * @param message  one or two sentences
 * @param rule     the rule that says so, if a rule does
 * @param mends    what would mend it, best first
 */
public record TextFinding(int offset, int length, Severity severity, String code, String message, Optional<Id> rule,
        List<TextMend> mends) implements Comparable<TextFinding> {

    private static final Comparator<TextFinding> ORDER = Comparator.comparingInt(TextFinding::offset)
            .thenComparing(TextFinding::severity).thenComparing(TextFinding::code).thenComparing(TextFinding::message);

    /** Takes a copy of the mends. */
    public TextFinding {
        mends = List.copyOf(mends);
    }

    @Override
    public int compareTo(TextFinding other) {
        return ORDER.compare(this, other);
    }
}
