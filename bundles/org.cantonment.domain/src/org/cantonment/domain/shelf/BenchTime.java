package org.cantonment.domain.shelf;

/**
 * What somebody gets done at the bench.
 *
 * @param most    so much of the measure, from 0
 * @param measure minutes, or parts that are built
 * @param perWeek whether it is for each week between two rounds; else for each round
 */
public record BenchTime(int most, Measure measure, boolean perWeek) {

    /** Days in a week. */
    private static final int WEEK = 7;
    private static final int HOUR = 60;

    /** What is counted at the bench. */
    public enum Measure {
        MINUTES, PARTS
    }

    /** @throws IllegalArgumentException if it is less than nothing */
    public BenchTime {
        if (most < 0) {
            throw new IllegalArgumentException(most + " " + measure + " at the bench");
        }
    }

    /** "3 hours 20 minutes", "1 hour", "0 minutes", or "4 parts". */
    public static String words(long amount, Measure measure) {
        if (measure == Measure.PARTS) {
            return some(amount, "part");
        }
        long hours = amount / HOUR;
        long minutes = amount % HOUR;
        return hours == 0 ? some(minutes, "minute") : some(hours, "hour") + (minutes == 0 ? "" : " " + some(minutes, "minute"));
    }

    private static String some(long count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    /** "6 hours per round", or "4 parts per week". */
    public String words() {
        return words(most, measure) + (perWeek ? " per week" : " per round");
    }

    /** How much it is in so many days where it is for each week; a started minute or part does not count. */
    public int in(long days) {
        return (int) Math.min(Integer.MAX_VALUE, Math.max(0, days) * most / WEEK);
    }
}
