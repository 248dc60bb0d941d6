package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;

/**
 * At most, at least, exactly or from..to of these, together. With per, the span holds for each group of perCount of
 * those.
 */
public record Bound(
        Id id, Measure measure, Span span, List<Id> of, int perCount, List<Id> per, Rounding rounding,
        Scope scope, Validity when) implements Fact {

    public Bound {
        of = List.copyOf(of);
        per = List.copyOf(per);
    }
}
