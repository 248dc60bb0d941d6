package org.cantonment.desk.shopping;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.buying.plan.Bench;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Verdict;

/**
 * A round of a growth plan.
 *
 * @param round    its number
 * @param title    what people call it beside its number; may be empty
 * @param limit    its limit of points
 * @param composed whether its list was composed, not written
 * @param list     what is fielded; empty if there is no plan
 * @param words    the list in one line
 * @param book     a composed list as the text of a file; empty where it was written, or there is none
 * @param verdict  what the judge says of it
 * @param bench    what can be built before it; empty for no end
 * @param out      why the plan goes on without this round, in whole sentences; empty if it is in the plan
 */
public record Step(int round, String title, OptionalInt limit, boolean composed, Optional<ForceList> list, String words,
        String book, Optional<Verdict> verdict, Optional<Bench> bench, List<String> out) {
    public Step {
        out = List.copyOf(out);
    }

    /** What makes the list not legal. */
    public List<Finding> breaches() {
        return verdict.map(one -> one.findings(Severity.BREACH)).orElse(List.of());
    }

    /** What is unwise about it, advice of the club among it. */
    public List<Finding> cautions() {
        return verdict.map(one -> one.findings(Severity.CAUTION)).orElse(List.of());
    }
}
