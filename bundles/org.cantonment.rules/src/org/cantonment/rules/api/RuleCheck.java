package org.cantonment.rules.api;

import java.util.List;

import org.cantonment.domain.finding.Finding;

/**
 * A check of lists, written by others: register one as an OSGi service of this type.
 *
 * <p>It must be free of side effects, give equal answers to equal questions, and keep nothing between two questions. It is
 * asked in one thread at a time, but not always in the same one.
 *
 * <p>A later version of this package may add methods, always with a body, so that a check built against this version
 * goes on working in any later one up to 2.0.
 */
public interface RuleCheck extends Guest {

    /** All kinds of finding that it may give, in the order of its reference; at least one. Codes differ. */
    List<FindingKind> findings();

    /**
     * Checks a list. May take a second at the very most, and should take less than a thousandth of one: it is asked
     * about every list whenever one of them is changed. Should look at the question's token wherever it works for longer
     * than a few milliseconds. Whatever it throws is reported as its own fault; only what the token throws is none.
     *
     * @param question what is asked; nothing of it can be changed
     * @return the findings, in any order, empty if there is nothing to say; best made by {@link FindingKind#at}. Each is of
     *         a kind that was declared, stands at the list, one of its contingents or one of its entries, and has a message
     *         of whole sentences. The changes of its mends are of this list
     */
    List<Finding> check(Question question);
}
