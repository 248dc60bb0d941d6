package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.Verdict;

/**
 * What the judge's refusals teach: where a list has too much of something, a list with as much of all that is refused alike,
 * and is not tried.
 */
final class Refusals {

    private final List<Draft> tooMuch = new ArrayList<>();

    /** Learns from a draft that was refused. */
    void learn(Draft draft, Verdict verdict) {
        boolean over = verdict.findings(Severity.BREACH).stream()
                .anyMatch(finding -> finding.code().equals("points.over"));
        if (over) {
            tooMuch.add(draft);
        }
    }

    /** Whether a draft has all that one that was refused has. */
    boolean refuses(Draft draft) {
        return tooMuch.stream().anyMatch(one -> one.formation().id().equals(draft.formation().id())
                && holds(draft, one));
    }

    private static boolean holds(Draft draft, Draft less) {
        return less.units().entrySet().stream()
                .allMatch(one -> draft.units().getOrDefault(one.getKey(), 0) >= one.getValue())
                && less.supports().entrySet().stream()
                        .allMatch(one -> draft.supports().getOrDefault(one.getKey(), 0) >= one.getValue());
    }
}
