package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.guest.Guests.Said;

/**
 * A breach that a check of others finds in a list.
 *
 * @param check   the check's name
 * @param finding what it says
 */
public record Objection(String check, Finding finding) {

    /** The breaches among what was said. */
    static List<Objection> in(List<Said> said) {
        List<Objection> all = new ArrayList<>();
        said.forEach(one -> one.findings().stream().filter(finding -> finding.severity() == Severity.BREACH)
                .forEach(finding -> all.add(new Objection(one.check().name(), finding))));
        return List.copyOf(all);
    }
}
