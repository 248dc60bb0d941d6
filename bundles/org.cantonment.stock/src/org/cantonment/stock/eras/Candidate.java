package org.cantonment.stock.eras;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;

/**
 * A unit at a strength that an army may have.
 *
 * @param most so many of the unit at the most, at all strengths together
 * @param needs what it needs of the shelf
 */
record Candidate(int place, Id unit, int most, Step step, List<Requirement> needs) {

    int pieces() {
        return needs.stream().mapToInt(Requirement::count).sum();
    }

    /** What so many of it need, together. */
    List<Requirement> times(int copies) {
        List<Requirement> all = new ArrayList<>();
        for (Requirement need : needs) {
            long count = Math.min(UnitAnswer.ENDLESS, (long) need.count() * copies);
            all.add(new Requirement(unit, Optional.of(unit), (int) count, need.anyOf()));
        }
        return all;
    }

    /** What the copy of this number needs, under a name of its own. */
    List<Requirement> copy(int number) {
        Id entry = unit.child("of-" + step.strength()).child(place + "-" + number);
        return needs.stream().map(need -> new Requirement(entry, Optional.of(unit), need.count(), need.anyOf())).toList();
    }
}
