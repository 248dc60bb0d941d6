package org.cantonment.buying.plan;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.finding.Finding;
import org.joda.money.Money;

/**
 * What the planner says.
 *
 * @param plan the best plan found
 * @param impossible whether it is proven that there is none
 * @param bound nothing costs less; empty if there is no plan at all
 * @param findings why there is none, or what was left out of account
 */
public record Answer(Optional<Plan> plan, boolean impossible, Optional<Money> bound, List<Finding> findings) {

    public Answer {
        findings = List.copyOf(findings);
    }
}
