package org.cantonment.buying.solve;

import java.util.List;

/** Chooses the column to branch on: the one that promises to raise the cost most on both sides. */
final class Branching {

    /**
     * Branch between below and below + 1.
     *
     * @param share how far the value lies above below
     */
    record Choice(int column, long below, double share, boolean upFirst) {
    }

    private static final double WHOLE = 1e-6;
    private static final int TRUSTED = 4;

    private final List<Column> columns;
    private final Tableau tableau;
    private final double[][] gains;
    private final int[][] counts;

    Branching(List<Column> columns, Tableau tableau) {
        this.columns = columns;
        this.tableau = tableau;
        gains = new double[2][columns.size()];
        counts = new int[2][columns.size()];
    }

    /** Learns from what the cost has become in a place. */
    void learn(Place place, double objective) {
        int j = place.branched();
        if (j >= 0 && place.share() > WHOLE) {
            int side = place.up() ? 1 : 0;
            gains[side][j] += Math.max(0, objective - place.estimate()) / place.share();
            counts[side][j]++;
        }
    }

    /** The column to branch on at these values; null if all are whole. */
    Choice choose(double[] values, long[] lower, long[] upper) {
        Choice best = null;
        double most = -1;
        int rank = Integer.MAX_VALUE;
        for (int i = 0; i < tableau.rows(); i++) {
            int j = tableau.basic[i];
            if (j < values.length) {
                double below = Math.floor(values[j] + WHOLE);
                double share = values[j] - below;
                int own = Math.abs(columns.get(j).rank());
                if (share > WHOLE && own <= rank && below >= lower[j] && below < upper[j]) {
                    double down = gain(0, j, i, share);
                    double up = gain(1, j, i, 1 - share);
                    double score = Math.max(down, 1e-6) * Math.max(up, 1e-6);
                    if (own < rank || score > most) {
                        most = score;
                        rank = own;
                        best = new Choice(j, (long) below, share, share > 0.5 || up < down);
                    }
                }
            }
        }
        return best;
    }

    private double gain(int side, int j, int row, double way) {
        if (counts[side][j] >= TRUSTED) {
            return gains[side][j] / counts[side][j] * way;
        }
        double penalty = penalty(side == 1, row, way);
        return counts[side][j] == 0 ? penalty : Math.max(penalty, gains[side][j] / counts[side][j] * way);
    }

    /** What the first exchange alone would cost. */
    private double penalty(boolean up, int row, double way) {
        double[] line = tableau.t[row];
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < tableau.n; k++) {
            int other = tableau.outside[k];
            double factor = up ? line[k] : -line[k];
            if (Math.abs(factor) > 1e-9 && tableau.upper[other] > tableau.lower[other]
                    && factor > 0 != tableau.high[other]) {
                least = Math.min(least, Math.abs(tableau.costs[k] / factor));
            }
        }
        return Math.min(least * way, 1e12);
    }

    /** The widest column cut in two; null if all are fixed. */
    static Choice halve(long[] lower, long[] upper) {
        int widest = 0;
        for (int j = 1; j < lower.length; j++) {
            if (upper[j] - lower[j] > upper[widest] - lower[widest]) {
                widest = j;
            }
        }
        if (lower.length == 0 || upper[widest] == lower[widest]) {
            return null;
        }
        return new Choice(widest, Math.floorDiv(lower[widest] + upper[widest], 2), 0, false);
    }
}
