package org.cantonment.desk.eras;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.Verdict;

/**
 * How a list stands in one era.
 *
 * @param era     the era
 * @param title   what people call it
 * @param written whether it is the one that the list is written for
 * @param limit   the limit of points, if there is one
 * @param verdict what the judge says of the list as it is written
 * @param objections what checks of others find in the list as it is written
 * @param atLarge what makes it legal, by the rules alone where nothing was found that contents the checks of others, too;
 *                empty if it is legal, or legal by the rules and nothing was found
 * @param owned   the same with what is owned; empty, too, if that is not known
 */
public record EraAnswer(Id era, String title, boolean written, OptionalInt limit, Verdict verdict,
        List<Objection> objections, Optional<Changes> atLarge, Optional<Changes> owned) {
    public EraAnswer {
        objections = List.copyOf(objections);
    }

    /** Whether the list is legal there, by the rules and by the checks of others. */
    public boolean legal() {
        return lawful() && objections.isEmpty();
    }

    /** Whether it is legal there by the rules, whatever checks of others say. */
    public boolean lawful() {
        return verdict.legal();
    }

    /** Its total there. */
    public long points() {
        return verdict.points();
    }

    /** What makes it not legal there: by the rules, then by the checks of others. */
    public List<Finding> breaches() {
        return Stream.concat(verdict.findings(Severity.BREACH).stream(), objections.stream().map(Objection::finding))
                .toList();
    }

    /** Whether the least change with what is owned is the least change at large. */
    public boolean ownedIsSame() {
        return owned.flatMap(Changes::best).isPresent() && atLarge.flatMap(Changes::best).isPresent()
                && owned.get().best().get().after().equals(atLarge.get().best().get().after());
    }
}
