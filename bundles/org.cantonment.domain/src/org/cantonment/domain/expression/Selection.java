package org.cantonment.domain.expression;

import java.util.List;

import org.cantonment.domain.common.Id;

/** Who is meant: these units, kinds, formations and supports, or all units, or all formations. */
public record Selection(Breadth breadth, List<Id> of) {

    /** How wide. */
    public enum Breadth {
        NAMED, UNITS, FORMATIONS
    }

    public Selection {
        of = List.copyOf(of);
    }

    /** These. */
    public static Selection of(Id... some) {
        return new Selection(Breadth.NAMED, List.of(some));
    }

    /** All units. */
    public static Selection units() {
        return new Selection(Breadth.UNITS, List.of());
    }

    /** All formations. */
    public static Selection formations() {
        return new Selection(Breadth.FORMATIONS, List.of());
    }
}
