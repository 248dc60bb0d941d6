package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/**
 * Drafts of about as many points that wait to be grown: of each choice of formations the few best, of as many choices as
 * can be looked at.
 */
final class Bucket {

    /** How a draft grows out of another one. */
    interface Step {
        Draft from(Draft parent);
    }

    private record Offer(Draft parent, Step step, long score) {
    }

    private static final int KEPT = 3;
    private static final int OFFERS = 9;
    private static final int SORTS = 10;

    private final TreeMap<Long, List<Offer>> offers = new TreeMap<>();
    private final Set<String> had = new HashSet<>();
    private boolean complete = true;

    /** Whether an offer of so low a score would be looked at. */
    boolean takes(long signature, long score) {
        List<Offer> some = offers.get(signature);
        if (some == null || some.size() < OFFERS || some.get(some.size() - 1).score() > score) {
            return true;
        }
        complete = false;
        return false;
    }

    /** Offers a draft; the lower the score, the better. */
    void offer(Draft parent, Step step, long signature, long score) {
        List<Offer> some = offers.computeIfAbsent(signature, key -> new ArrayList<>());
        int at = some.size();
        while (at > 0 && some.get(at - 1).score() > score) {
            at--;
        }
        some.add(at, new Offer(parent, step, score));
        if (some.size() > OFFERS) {
            some.remove(some.size() - 1);
            complete = false;
        }
    }

    /** Takes out the best, none twice. */
    List<Draft> take() {
        List<List<Offer>> sorts = new ArrayList<>(offers.values());
        offers.clear();
        sorts.sort(Comparator.comparingLong((List<Offer> some) -> some.get(0).score()));
        complete &= sorts.size() <= SORTS;
        List<Draft> best = new ArrayList<>();
        for (List<Offer> some : sorts.subList(0, Math.min(SORTS, sorts.size()))) {
            int kept = 0;
            for (int i = 0; i < some.size() && kept < KEPT; i++) {
                Draft draft = some.get(i).step().from(some.get(i).parent());
                if (had.add(draft.key())) {
                    best.add(draft);
                    kept++;
                    complete &= kept < KEPT || i == some.size() - 1;
                }
            }
        }
        return best;
    }

    boolean empty() {
        return offers.isEmpty();
    }

    /** Whether nothing that was offered was left out. */
    boolean complete() {
        return complete;
    }
}
