package org.cantonment.domain.rules;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;

/**
 * A check. Its facts are Bound, Taking, Keep, Before, Let, Always, Provided, Says and MendText lines; a limit without
 * a severity is a breach.
 */
public record Limit(
        Id id, String label, Optional<Severity> severity, List<Fact> facts, List<String> notes) implements Ruled {

    public Limit {
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }
}
