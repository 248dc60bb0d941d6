package org.cantonment.rules.api;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;

/**
 * A kind of finding that a check may give.
 *
 * @param code stable within the check: small letters, digits and hyphens, beginning with a letter: {@code too-few}. People
 *        see it behind the check's name: {@code check.river-crossing.too-few}
 * @param severity how grave it is unless the campaign's line says otherwise
 * @param about what it means and what mends it, in a sentence for the check's reference. Not blank
 */
public record FindingKind(String code, Severity severity, String about) {

    /** @throws NullPointerException if something is missing */
    public FindingKind {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(about, "about");
    }

    /**
     * A finding of this kind.
     *
     * @param place the id of the list, of one of its contingents or of one of its entries
     * @param message whole sentences, with names and numbers
     * @param mends what would mend it, the best first
     */
    public Finding at(Id place, String message, Mend... mends) {
        return new Finding(code, severity, place, Optional.empty(), message, List.of(mends));
    }
}
