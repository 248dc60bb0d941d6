package org.cantonment.rules.api;

import java.util.List;

import org.cantonment.domain.finding.Finding;

/**
 * A check of lists, written by others. Must be free of side effects, give the same answer to the same question, and
 * serve several threads at once.
 */
public interface RuleCheck {

    /**
     * The name by which a campaign asks for it: one word with a capital, parts joined by hyphens, never changed once
     * published. {@code River-Crossing}.
     */
    String name();

    /** What it checks, in a sentence for the organiser. */
    String about();

    /** The settings it takes; their order is that of the reference. Empty if it takes none. */
    List<Parameter> parameters();

    /**
     * Checks a list. Called on any thread but the screen's; should look at the question's token wherever it may work for
     * longer than a few milliseconds. Whatever it throws is reported as its own fault.
     *
     * @return the findings, in any order, empty if there is nothing to say; each with a code of its own (it is shown as
     *         {@code check.<code>}), a place that is the list or one of its entries, and a message of whole sentences
     */
    List<Finding> check(Question question);
}
