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

    /** How much it is in so many days where it is for each week; a started minute or part does not count. */
    public int in(long days) {
        return (int) Math.min(Integer.MAX_VALUE, Math.max(0, days) * most / WEEK);
    }
}
