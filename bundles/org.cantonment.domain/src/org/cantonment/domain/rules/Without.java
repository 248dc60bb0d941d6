package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** Takes away options or billets by name, or strengths by number. */
public record Without(Id id, List<String> names, List<Integer> strengths, Validity when) implements Fact {

    public Without {
        names = List.copyOf(names);
        strengths = List.copyOf(strengths);
    }
}
