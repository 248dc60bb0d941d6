package org.cantonment.domain.rules;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;

/** Who takes one of the subjects: what else that asks for. */
public record Taking(
        Id id, List<Id> subjects, Relation relation, Optional<Span> span, List<Id> objects, Scope scope,
        Validity when) implements Fact {

    public Taking {
        subjects = List.copyOf(subjects);
        objects = List.copyOf(objects);
    }
}
