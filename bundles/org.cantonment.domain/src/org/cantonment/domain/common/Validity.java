package org.cantonment.domain.common;

import java.util.List;

/** When something holds: all of its conditions must hold; without any it always does. */
public record Validity(List<When> conditions) {

    /** Holds at all times. */
    public static final Validity ALWAYS = new Validity(List.of());

    public Validity {
        conditions = List.copyOf(conditions);
    }

    /** Holds where all of these hold. */
    public static Validity of(When... conditions) {
        return conditions.length == 0 ? ALWAYS : new Validity(List.of(conditions));
    }

    /** Whether it holds at all times. */
    public boolean always() {
        return conditions.isEmpty();
    }

    /** Whether it holds then; a condition on what the occasion leaves open does not. */
    public boolean covers(Occasion occasion, EraOrder eras) {
        for (When condition : conditions) {
            if (!condition.covers(occasion, eras)) {
                return false;
            }
        }
        return true;
    }
}
