package org.cantonment.desk.shopping;

import java.util.Optional;

import org.cantonment.buying.plan.Target;
import org.cantonment.domain.force.ForceList;

/**
 * Something to be fielded, and the list that asks for it.
 *
 * @param list empty where things are wanted that are in no list
 */
public record Aim(Target target, Optional<ForceList> list) {
    /** What people call it. */
    public String title() {
        return target.title();
    }
}
