package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** Forbids, allows or lifts what a book below says. */
public record Withdrawal(Id id, Act act, List<Id> targets, Validity when, List<String> notes) {

    public Withdrawal {
        targets = List.copyOf(targets);
        notes = List.copyOf(notes);
    }
}
