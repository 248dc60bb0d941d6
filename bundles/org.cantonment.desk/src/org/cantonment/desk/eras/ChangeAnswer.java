package org.cantonment.desk.eras;

import java.util.List;
import java.util.stream.Collectors;

import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Verdict;

/**
 * A change that makes a list legal in an era by the rules.
 *
 * @param edits   what to do
 * @param moved   the points moved: taken out at the price written, put in at the era's; a strength moves the difference
 * @param units   the units touched
 * @param after   the list as changed
 * @param verdict what the judge says of it
 * @param objections what checks of others still find in it
 */
public record ChangeAnswer(List<Edit> edits, long moved, int units, ForceList after, Verdict verdict,
        List<Objection> objections) {
    public ChangeAnswer {
        edits = List.copyOf(edits);
        objections = List.copyOf(objections);
    }

    /** Whether nobody finds a breach in it any more. */
    public boolean legal() {
        return verdict.legal() && objections.isEmpty();
    }

    /** The total after it. */
    public long points() {
        return verdict.points();
    }

    /** All of it as one mend of the list. */
    public Mend mend() {
        return new Mend(words(), edits.stream().flatMap(edit -> edit.actions().stream()).toList());
    }

    /** All of it in one sentence without its full stop. */
    public String words() {
        return edits.stream().map(Edit::words).collect(Collectors.joining("; "));
    }

    /** All of it in the fewest words. */
    public String brief() {
        return edits.stream().map(Edit::brief).collect(Collectors.joining(", "));
    }
}
