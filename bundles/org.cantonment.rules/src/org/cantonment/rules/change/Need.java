package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * What a list lacks to be legal: every change that makes it so holds edits whose effects sum up to the deficit at the
 * least.
 *
 * @param deficit at least 1 for what is lacking; less where there is room to spare
 * @param edits those that help, in order
 * @param effects of each edit that helps, from 1 to the deficit
 * @param all the effects of all edits that may be done, in order; negative where one makes it worse
 */
record Need(long deficit, List<Edit> edits, long[] effects, long[] all) {

    /** The effect of an edit after which anything may be possible. */
    static final long PLENTY = 1_000_000_000L;

    /** @param effect of an edit at the most; 0 or less if it does not help */
    static Need of(long deficit, List<Edit> open, ToLongFunction<Edit> effect) {
        List<Edit> edits = new ArrayList<>();
        long[] effects = new long[open.size()];
        long[] all = new long[open.size()];
        boolean worse = false;
        for (int i = 0; i < all.length; i++) {
            all[i] = Math.min(PLENTY, effect.applyAsLong(open.get(i)));
            worse |= all[i] < 0;
            if (all[i] > 0) {
                effects[edits.size()] = Math.min(deficit, all[i]);
                edits.add(open.get(i));
            }
        }
        for (int i = 0; i < all.length && !worse; i++) {
            all[i] = Math.min(Math.max(0, deficit), all[i]);
        }
        return new Need(deficit, edits, effects, all);
    }
}
