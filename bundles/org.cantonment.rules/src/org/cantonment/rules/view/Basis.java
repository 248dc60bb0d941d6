package org.cantonment.rules.view;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;

/**
 * A finding, and whose rule it rests on.
 *
 * @param card the unit, formation, support or limit whose rule it is, whatever layer says the line
 * @param subject the unit or formation that is at fault; the card itself where there is none
 */
public record Basis(Finding finding, Id card, Id subject) implements Comparable<Basis> {

    /** In the order of the findings, then of the cards. */
    @Override
    public int compareTo(Basis other) {
        int order = finding.compareTo(other.finding);
        return order != 0 ? order : card.compareTo(other.card);
    }
}
