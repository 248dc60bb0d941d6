package org.cantonment.buying.solve;

import java.util.Arrays;

import org.cantonment.domain.common.CancelToken;

/** The bounded dual simplex: mends one row after another that lies outside its bounds, at the least rise in cost. */
final class DualSimplex {

    /** How a run ended. */
    enum End {
        OPTIMAL, IMPOSSIBLE, BEYOND, STOPPED
    }

    private static final double TOLERANCE = 1e-7;
    private static final double SMALL = 1e-9;

    private final Tableau tableau;
    private final CancelToken cancel;
    private double[] weights = new double[0];
    private final int[] order;
    private final double[] ratios;
    private int blocked;
    private boolean tooLow;
    private double lacking;
    private int sinceRenewed;

    DualSimplex(Tableau tableau, CancelToken cancel) {
        this.tableau = tableau;
        this.cancel = cancel;
        order = new int[tableau.n];
        ratios = new double[tableau.n];
    }

    /** The row that showed that nothing can be had. */
    int blocked() {
        return blocked;
    }

    /** Whether the blocked row lies below its bounds, else above. */
    boolean tooLow() {
        return tooLow;
    }

    /** How far the blocked row stays off its bounds, whatever the others do. */
    double lacking() {
        return lacking;
    }

    /** Runs from the tableau as it is, after its bounds were moved; ends early where the cost rises beyond a figure. */
    End run(double beyond, int most) {
        if (weights.length != tableau.rows()) {
            weights = new double[tableau.rows()];
            Arrays.fill(weights, 1);
        }
        tableau.settle();
        for (int round = 0; round < most; round++) {
            if (cancel.cancelled()) {
                return End.STOPPED;
            }
            if (++sinceRenewed > 200) {
                renew();
                if (cancel.cancelled()) {
                    return End.STOPPED;
                }
            }
            int r = leaving();
            if (r < 0) {
                return End.OPTIMAL;
            }
            if ((round & 7) == 7 && tableau.objective() > beyond) {
                return End.BEYOND;
            }
            int q = entering(r);
            if (q < 0) {
                blocked = r;
                return End.IMPOSSIBLE;
            }
            step(r, q);
        }
        return End.STOPPED;
    }

    private void renew() {
        tableau.renew(cancel);
        tableau.settle();
        Arrays.fill(weights, 1);
        sinceRenewed = 0;
    }

    private int leaving() {
        int best = -1;
        double most = 0;
        for (int i = 0; i < tableau.rows(); i++) {
            int variable = tableau.basic[i];
            double off = Math.max(tableau.lower[variable] - tableau.value[i],
                    tableau.value[i] - tableau.upper[variable]);
            if (off > TOLERANCE) {
                double weight = off * off / weights[i];
                if (weight > most) {
                    most = weight;
                    best = i;
                }
            }
        }
        return best;
    }

    /** The place of what enters; those passed on the way change their bound. -1 if all of them together do not do. */
    private int entering(int r) {
        int variable = tableau.basic[r];
        tooLow = tableau.value[r] < tableau.lower[variable];
        double sign = tooLow ? 1 : -1;
        double off = tooLow ? tableau.lower[variable] - tableau.value[r] : tableau.value[r] - tableau.upper[variable];
        double[] line = tableau.t[r];
        int count = 0;
        for (int j = 0; j < tableau.n; j++) {
            double factor = sign * line[j];
            int other = tableau.outside[j];
            if (Math.abs(factor) > SMALL && tableau.upper[other] > tableau.lower[other]
                    && factor > 0 != tableau.high[other]) {
                order[count] = j;
                ratios[j] = Math.abs(tableau.costs[j] / factor);
                count++;
            }
        }
        int passed = 0;
        while (passed < count) {
            int k = least(passed, count);
            double reach = ratios[order[k]] + SMALL;
            int chosen = k;
            double width = 0;
            int end = passed;
            for (int i = passed; i < count; i++) {
                int j = order[i];
                if (ratios[j] <= reach) {
                    width += Math.abs(line[j]) * (tableau.upper[tableau.outside[j]] - tableau.lower[tableau.outside[j]]);
                    order[i] = order[end];
                    order[end] = j;
                    end++;
                }
            }
            if (width >= off - TOLERANCE / 2) {
                chosen = passed;
                for (int i = passed; i < end; i++) {
                    if (Math.abs(line[order[i]]) > Math.abs(line[order[chosen]])) {
                        chosen = i;
                    }
                }
                int q = order[chosen];
                flip(passed);
                return q;
            }
            off -= width;
            passed = end;
        }
        lacking = off;
        return -1;
    }

    private int least(int from, int to) {
        int best = from;
        for (int i = from + 1; i < to; i++) {
            if (ratios[order[i]] < ratios[order[best]]) {
                best = i;
            }
        }
        return best;
    }

    private void flip(int count) {
        for (int k = 0; k < count; k++) {
            int j = order[k];
            int variable = tableau.outside[j];
            double width = tableau.upper[variable] - tableau.lower[variable];
            double move = tableau.high[variable] ? -width : width;
            tableau.high[variable] = !tableau.high[variable];
            shift(j, move);
        }
    }

    private void shift(int j, double move) {
        for (int i = 0; i < tableau.rows(); i++) {
            double factor = tableau.t[i][j];
            if (factor != 0) {
                tableau.value[i] += factor * move;
            }
        }
    }

    private void step(int r, int q) {
        int leaves = tableau.basic[r];
        double target = tooLow ? tableau.lower[leaves] : tableau.upper[leaves];
        double pivot = tableau.t[r][q];
        double move = (target - tableau.value[r]) / pivot;
        double start = tableau.at(q);
        reweigh(r, q, pivot);
        shift(q, move);
        tableau.pivot(r, q);
        tableau.value[r] = start + move;
        tableau.high[leaves] = !tooLow;
    }

    private void reweigh(int r, int q, double pivot) {
        double own = weights[r];
        for (int i = 0; i < weights.length; i++) {
            double factor = tableau.t[i][q];
            if (i != r && factor != 0) {
                double share = factor / pivot;
                weights[i] = Math.max(weights[i], share * share * own);
            }
        }
        weights[r] = Math.max(own / (pivot * pivot), 1);
    }
}
