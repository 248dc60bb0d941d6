package org.cantonment.domain.finding;

import java.util.List;

/** One way to mend a finding: its words, and the changes that do it. */
public record Mend(String label, List<Action> actions) {

    public Mend {
        actions = List.copyOf(actions);
    }

    /** A mend in words only. */
    public static Mend advice(String label) {
        return new Mend(label, List.of(new Advice()));
    }
}
