package org.cantonment.stock.turnout;

import java.util.List;

import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Truth;

/**
 * Whether what is there is enough for what is needed: who stands where, and what is short.
 *
 * <p>It fills as many places as can be filled. Among such turnouts it is one with the most exact pieces, then the most
 * kindred, then the most stand-ins; then one that rests on the fewest guessed pieces, then one that builds least. The same
 * question always has the same answer.
 *
 * @param postings who stands where, in the order of the needs
 * @param needed how many pieces are needed
 * @param filled how many places are filled
 * @param bound no turnout fills more; more than filled only where the search was cut off
 * @param truest whether no turnout that fills as many is truer, proven
 * @param builds frames that it would have built
 * @param worked conversions that it would have made
 * @param guesses what it counts on though it is only guessed; empty if the answer is sure
 * @param reasons why pieces are short; empty if none are
 * @param aside needs that an item would fill, which no shelf holds; they are not counted
 */
public record Turnout(
        List<Posting> postings, int needed, int filled, int bound, boolean truest, List<Build> builds,
        List<Worked> worked, List<Guess> guesses, List<Reason> reasons, List<Requirement> aside) {

    public Turnout {
        postings = List.copyOf(postings);
        builds = List.copyOf(builds);
        worked = List.copyOf(worked);
        guesses = List.copyOf(guesses);
        reasons = List.copyOf(reasons);
        aside = List.copyOf(aside);
    }

    /** How many pieces are short. */
    public int lacking() {
        return needed - filled;
    }

    /** Whether everything needed is there. */
    public boolean complete() {
        return filled == needed;
    }

    /** Whether no turnout fills more. */
    public boolean proven() {
        return bound == filled;
    }

    /** How many stand as truly as this. */
    public int standing(Truth truth) {
        return postings.stream().filter(posting -> posting.truth() == truth).mapToInt(Posting::count).sum();
    }

    /** How many of what this need asks for are there. */
    public int filled(Requirement need) {
        return postings.stream().filter(posting -> posting.need().equals(need)).mapToInt(Posting::count).sum();
    }
}
