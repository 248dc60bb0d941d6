package org.cantonment.buying.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Allowance;

/**
 * Something to be fielded: a list's needs, and what may stand for what when it is played. Extras and parts that are wanted
 * as such are needs, too. Needs that are items of a rule set are passed over: no shelf holds them.
 *
 * @param person whose it is, from 0, where several order together: the place of his shelf in the question
 * @param choice what it is one of; empty if it must stand
 * @param stage when it must stand, from 0: what is bought in this stage or before serves it
 */
public record Target(Id id, String title, int person, int stage, List<Requirement> needs, Allowance allowance,
        Optional<Choice> choice) {

    /**
     * Of the targets of one choice in one stage exactly one stands.
     *
     * @param of what the choice is called
     * @param points what the target uses of what may be used; of two as cheap the one with more is preferred
     * @param after the targets of the stage before of which one must have stood; empty if it may follow any
     */
    public record Choice(Id of, int points, Optional<Set<Id>> after) {

        public Choice {
            after = after.map(Set::copyOf);
        }
    }

    public Target {
        needs = List.copyOf(needs);
        if (stage < 0 || person < 0) {
            throw new IllegalArgumentException(title + " of person " + person + " stands in stage " + stage);
        }
    }

    /** Of the only person there is. */
    public Target(Id id, String title, int stage, List<Requirement> needs, Allowance allowance) {
        this(id, title, 0, stage, needs, allowance, Optional.empty());
    }

    /** The same of another person. */
    public Target of(int other) {
        return new Target(id, title, other, stage, needs, allowance, choice);
    }

    /** The same as one of a choice. */
    public Target oneOf(Choice which) {
        return new Target(id, title, person, stage, needs, allowance, Optional.of(which));
    }

    /** To be fielded with whatever is bought at once. */
    public static Target now(Id id, String title, List<Requirement> needs, Allowance allowance) {
        return new Target(id, title, 0, needs, allowance);
    }
}
