package org.cantonment.rules.compile;

import java.util.HashSet;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Scope;

/** What makes two bounds of one book the same line at different times. */
record BoundKey(Measure measure, Set<Id> of, Set<Id> per, Scope scope, boolean upper, boolean lower) {

    static BoundKey of(Bound bound) {
        return new BoundKey(bound.measure(), new HashSet<>(bound.of()), new HashSet<>(bound.per()), bound.scope(),
                bound.span().bounded(), bound.span().min() > 0);
    }
}
