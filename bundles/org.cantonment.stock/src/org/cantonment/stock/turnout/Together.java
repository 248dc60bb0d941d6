package org.cantonment.stock.turnout;

import java.util.List;

/**
 * Several lists of a season, each fielded with the whole shelf, after one choice of what is glued how.
 *
 * @param turnouts the turnout of each list, in their order
 * @param builds the choice: glued frames that any of them needs built. What can be rebuilt between games is each list's own
 * @param bound no choice fills more places in all lists together; more than filled only where the search was cut off
 * @param choices how many choices were looked at
 */
public record Together(List<Turnout> turnouts, List<Build> builds, int bound, int choices) {

    public Together {
        turnouts = List.copyOf(turnouts);
        builds = List.copyOf(builds);
    }

    /** How many places are filled in all lists together. */
    public int filled() {
        return turnouts.stream().mapToInt(Turnout::filled).sum();
    }

    /** How many pieces are short in all lists together. */
    public int lacking() {
        return turnouts.stream().mapToInt(Turnout::lacking).sum();
    }

    /** Whether no choice leaves less short. */
    public boolean proven() {
        return bound == filled();
    }
}
