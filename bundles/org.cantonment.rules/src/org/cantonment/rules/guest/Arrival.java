package org.cantonment.rules.guest;

import java.util.Optional;

import org.cantonment.rules.api.RuleCheck;

/** A check that came and said who it is. */
final class Arrival {

    final RuleCheck check;
    private volatile KnownCheck known;
    private int asked;

    Arrival(RuleCheck check, KnownCheck known) {
        this.check = check;
        this.known = known;
    }

    KnownCheck known() {
        return known;
    }

    void shut(String how) {
        known = known.shut(Optional.of(how));
    }

    void forgive() {
        known = known.shut(Optional.empty());
    }

    /**
     * Whether its next answer is to be asked for twice: at its first question, and then ever more seldom. By number and not
     * by chance, so that the same calls always do the same work.
     */
    synchronized boolean twice() {
        asked++;
        return Integer.bitCount(asked) == 1;
    }
}
