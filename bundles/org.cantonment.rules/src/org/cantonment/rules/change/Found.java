package org.cantonment.rules.change;

import java.util.List;

/**
 * What a search for the least change found.
 *
 * @param answers the least change, then the next ones, as many as were asked for and found; from a search that was given
 *        up some change, if one was found
 * @param complete whether the search ended by itself: then no change moves less than the first answer, or there is none
 * @param bound no change that is not among the answers moves fewer points than this, unless it holds one of them
 */
public record Found(List<Answer> answers, boolean complete, long bound) {

    public Found {
        answers = List.copyOf(answers);
    }
}
