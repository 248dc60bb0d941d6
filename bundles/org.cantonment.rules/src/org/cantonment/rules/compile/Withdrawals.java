package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.rules.Act;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Withdrawal;

/**
 * What the layers forbid, allow and lift at this time. Allow and lift say that they relax, and so stand against a forbid
 * of a book that does not stand over theirs.
 */
final class Withdrawals {

    /** A withdrawal and the number of its book. */
    record Spoken(Withdrawal withdrawal, int book, int closeness) {
    }

    private final BookOrder order;
    private final Map<Id, List<Spoken>> byTarget = new HashMap<>();

    Withdrawals(BookOrder order, EraTree eras, Occasion occasion) {
        this.order = order;
        for (RuleSet book : order.books()) {
            for (Withdrawal withdrawal : book.withdrawals()) {
                if (withdrawal.when().covers(occasion, eras)) {
                    Spoken spoken = new Spoken(withdrawal, order.number(book), eras.closeness(withdrawal.when()));
                    for (Id target : withdrawal.targets()) {
                        byTarget.computeIfAbsent(target, any -> new ArrayList<>()).add(spoken);
                    }
                }
            }
        }
    }

    /** The forbid that stands against the target, if there is one. */
    Optional<Spoken> forbid(Id target) {
        Spoken stands = last(target, Act.FORBID);
        if (stands == null || relaxes(last(target, Act.ALLOW), stands) || relaxes(last(target, Act.LIFT), stands)) {
            return Optional.empty();
        }
        return Optional.of(stands);
    }

    /** Whether the target is allowed whatever the eras say. */
    boolean allows(Id target) {
        return last(target, Act.ALLOW) != null;
    }

    /** Whether the rule of this id does not hold. */
    boolean lifts(Id target) {
        return last(target, Act.LIFT) != null;
    }

    private boolean relaxes(Spoken relaxing, Spoken forbid) {
        if (relaxing == null) {
            return false;
        }
        if (relaxing.book() == forbid.book()) {
            return relaxing.closeness() > forbid.closeness();
        }
        return !order.over(forbid.book(), relaxing.book());
    }

    private Spoken last(Id target, Act act) {
        Spoken found = null;
        for (Spoken spoken : byTarget.getOrDefault(target, List.of())) {
            if (spoken.withdrawal().act() == act
                    && (found == null || spoken.book() > found.book() || spoken.closeness() > found.closeness())) {
                found = spoken;
            }
        }
        return found;
    }
}
