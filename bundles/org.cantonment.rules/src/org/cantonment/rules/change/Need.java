package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * What a list lacks to be legal: every change that makes it so holds some of these edits, whose effects sum up to the
 * deficit at the least.
 *
 * @param deficit at least 1
 * @param edits in order
 * @param effects of each edit, from 1 to the deficit
 */
record Need(long deficit, List<Edit> edits, long[] effects) {

    /** @param effect of an edit; 0 or less if it does not help */
    static Need of(long deficit, List<Edit> open, ToLongFunction<Edit> effect) {
        List<Edit> edits = new ArrayList<>();
        long[] effects = new long[open.size()];
        for (Edit edit : open) {
            long of = effect.applyAsLong(edit);
            if (of > 0) {
                effects[edits.size()] = Math.min(deficit, of);
                edits.add(edit);
            }
        }
        return new Need(deficit, edits, effects);
    }
}
