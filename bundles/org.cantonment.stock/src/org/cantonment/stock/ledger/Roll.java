package org.cantonment.stock.ledger;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;

/**
 * What the campaign says an army has not: lost and not rebuilt, or wounded and not back. The models lie in their case all
 * the same.
 *
 * @param out what is out, by piece type; types with nothing out are not there
 * @param funds what is in each fund; may be below nothing where more was spent than there was
 * @param findings where deeds cannot be as they were written
 */
public record Roll(Map<Id, Out> out, Map<Id, Integer> funds, List<Finding> findings) {

    /** So many of a type are lost, and so many more only wounded. */
    public record Out(int lost, int wounded) {

        /** How many may not be fielded. */
        public int all() {
            return lost + wounded;
        }
    }

    public Roll {
        out = Collections.unmodifiableMap(new TreeMap<>(out));
        funds = Collections.unmodifiableMap(new TreeMap<>(funds));
        findings = List.copyOf(findings);
    }

    /** What is out of this type. */
    public Out out(Id type) {
        return out.getOrDefault(type, new Out(0, 0));
    }

    /** How many are left of so many that were enrolled. */
    public int left(Id type, int enrolled) {
        return Math.max(0, enrolled - out(type).all());
    }
}
