package org.cantonment.domain.finding;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;

/**
 * What a check says.
 *
 * @param code stable and dotted, as in {@code billet.empty}
 * @param at the place of what is found: an entry, a list, a line of a book
 * @param rule the place of the rule that it breaks, if a rule is behind it
 * @param message one or more complete sentences, with names and numbers
 * @param mends what would mend it, the best first
 */
public record Finding(String code, Severity severity, Id at, Optional<Id> rule, String message, List<Mend> mends)
        implements Comparable<Finding> {

    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::severity)
            .thenComparing(Finding::at).thenComparing(Finding::code)
            .thenComparing(found -> found.rule().map(Id::text).orElse("")).thenComparing(Finding::message);

    public Finding {
        mends = List.copyOf(mends);
    }

    /** A finding with no rule behind it and no mend. */
    public static Finding of(String code, Severity severity, Id at, String message) {
        return new Finding(code, severity, at, Optional.empty(), message, List.of());
    }

    /** The same with these mends. */
    public Finding withMends(List<Mend> others) {
        return new Finding(code, severity, at, rule, message, others);
    }

    /** The same, as grave as that. */
    public Finding withSeverity(Severity other) {
        return new Finding(code, other, at, rule, message, mends);
    }

    /** Gravest first, then by place, code, rule and words. */
    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }
}
