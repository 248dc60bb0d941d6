package org.cantonment.domain.common;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The nearest known word to a mistyped one. */
public final class Nearest {

    /** Above this many candidates, only those that share the first letter are weighed. */
    private static final int MANY = 2_000;

    private Nearest() {
    }

    /**
     * @param typed the word as typed
     * @param known the words that would do, in an order that settles ties
     * @return the known word with the fewest letters added, dropped, changed or swapped, if these are few enough for
     *         the word's length (none below 3 letters, one below 6, two below 9, three beyond); upper and lower case count as equal
     */
    public static Optional<String> of(String typed, Collection<String> known) {
        String word = typed.toLowerCase(Locale.ROOT);
        int least = word.length() < 3 ? 1 : word.length() < 6 ? 2 : word.length() < 9 ? 3 : 4;
        if (word.length() > 64) {
            return Optional.empty();
        }
        String best = null;
        for (String each : known) {
            if (Math.abs(each.length() - word.length()) >= least || known.size() > MANY && !sharesStart(word, each)) {
                continue;
            }
            int distance = distance(word, each.toLowerCase(Locale.ROOT), least);
            if (distance < least) {
                least = distance;
                best = each;
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean sharesStart(String word, String other) {
        return !word.isEmpty() && !other.isEmpty() && word.charAt(0) == Character.toLowerCase(other.charAt(0));
    }

    /** Damerau's distance with adjacent swaps; gives up at the limit. */
    private static int distance(String a, String b, int limit) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            int smallest = i;
            for (int j = 1; j <= b.length(); j++) {
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + same);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], before[j - 2] + 1);
                }
                smallest = Math.min(smallest, row[j]);
            }
            if (smallest >= limit) {
                return limit;
            }
            int[] free = before;
            before = last;
            last = row;
            row = free;
        }
        return last[b.length()];
    }
}
