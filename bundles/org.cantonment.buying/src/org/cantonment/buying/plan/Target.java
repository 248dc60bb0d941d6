package org.cantonment.buying.plan;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Allowance;

/**
 * Something to be fielded: a list's needs, and what may stand for what when it is played. Extras and parts that are wanted
 * as such are needs, too. Needs that are items of a rule set are passed over: no shelf holds them.
 *
 * @param person whose it is, from 0, where several order together: the place of his shelf in the question
 * @param stage when it must stand, from 0: what is bought in this stage or before serves it
 */
public record Target(Id id, String title, int person, int stage, List<Requirement> needs, Allowance allowance) {

    public Target {
        needs = List.copyOf(needs);
        if (stage < 0 || person < 0) {
            throw new IllegalArgumentException(title + " of person " + person + " stands in stage " + stage);
        }
    }

    /** Of the only person there is. */
    public Target(Id id, String title, int stage, List<Requirement> needs, Allowance allowance) {
        this(id, title, 0, stage, needs, allowance);
    }

    /** The same of another person. */
    public Target of(int other) {
        return new Target(id, title, other, stage, needs, allowance);
    }

    /** To be fielded with whatever is bought at once. */
    public static Target now(Id id, String title, List<Requirement> needs, Allowance allowance) {
        return new Target(id, title, 0, needs, allowance);
    }
}
