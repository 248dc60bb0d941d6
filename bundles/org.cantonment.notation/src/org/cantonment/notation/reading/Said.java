package org.cantonment.notation.reading;

import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.EObject;

/** Something that is said at most once: the first time holds, and any other time is a finding. */
final class Said<T> {

    private final Reading reading;
    private boolean said;
    private Optional<T> value = Optional.empty();

    Said(Reading reading) {
        this.reading = reading;
    }

    /** Takes in what a line says; empty if it could not be read, which has been reported elsewhere. */
    void say(EObject at, Optional<T> now) {
        if (said) {
            reading.problem(at, null, Severity.BREACH, Codes.TWICE, "This is said twice here; the first holds.");
            return;
        }
        said = true;
        value = now;
    }

    Optional<T> value() {
        return value;
    }

    static OptionalInt number(Said<Integer> said) {
        return said.value.isPresent() ? OptionalInt.of(said.value.get()) : OptionalInt.empty();
    }
}
