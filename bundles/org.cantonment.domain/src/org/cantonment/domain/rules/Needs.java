package org.cantonment.domain.rules;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;

/** The pieces it needs: once, or once for each one of its strength. */
public record Needs(Id id, boolean each, List<Need> needs, Validity when) implements Fact {

    public Needs {
        needs = List.copyOf(needs);
    }
}
