package org.cantonment.rules;

import java.util.List;

import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.muster.Tally;
import org.cantonment.rules.view.Basis;

/**
 * What the judge says of a list.
 *
 * @param bases the findings and whose rules they rest on: gravest first, then by place; always in the same order
 * @param tally what the list without its contingents costs, with all parts
 * @param contingents what each contingent costs, in the order of the list
 * @param placings who stands in which billet or support
 */
public record Verdict(List<Basis> bases, Tally tally, List<Tally> contingents, List<Placing> placings) {

    public Verdict {
        bases = List.copyOf(bases);
        contingents = List.copyOf(contingents);
        placings = List.copyOf(placings);
    }

    /** The findings, in order. */
    public List<Finding> findings() {
        return bases.stream().map(Basis::finding).toList();
    }

    /** The points of the whole list. */
    public long points() {
        long points = tally.points();
        for (Tally contingent : contingents) {
            points += contingent.points();
        }
        return points;
    }

    /** Whether there is no breach. */
    public boolean legal() {
        return bases.isEmpty() || bases.get(0).finding().severity() != Severity.BREACH;
    }

    /** The findings of one severity. */
    public List<Finding> findings(Severity severity) {
        return findings().stream().filter(finding -> finding.severity() == severity).toList();
    }
}
