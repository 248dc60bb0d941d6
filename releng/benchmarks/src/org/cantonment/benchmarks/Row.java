package org.cantonment.benchmarks;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * One measure.
 *
 * @param measure   what was measured, with its unit
 * @param ours      how long ours takes
 * @param reference how long the bare minimum takes, in the same run
 */
record Row(String measure, double ours, double reference) {
    /** How many times as long ours takes. */
    double ratio() {
        return ours / reference;
    }

    /** A row out of nanoseconds, as milliseconds at a share of all runs: 0.5 for the median. */
    static Row at(double share, String measure, List<Long> ours, List<Long> reference) {
        return new Row(measure, at(share, ours) / 1e6, at(share, reference) / 1e6);
    }

    private static long at(double share, List<Long> times) {
        long[] sorted = times.stream().mapToLong(Long::longValue).toArray();
        Arrays.sort(sorted);
        return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }

    /** The row of a table. */
    String line() {
        return String.format(Locale.ROOT, "%-62s %10.1f %10.1f %6.2f", measure, ours, reference, ratio());
    }

    /** The row as an object. */
    String json() {
        return String.format(Locale.ROOT, "{\"measure\": \"%s\", \"ours\": %.2f, \"reference\": %.2f, \"ratio\": %.3f}",
                measure, ours, reference, ratio());
    }
}
