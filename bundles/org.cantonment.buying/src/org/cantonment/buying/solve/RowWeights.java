package org.cantonment.buying.solve;

/** Weights of rows, as the simplex of the moment suggests them: the makings of bounds and refutations. */
final class RowWeights {

    private RowWeights() {
    }

    /** What one more that a row must reach would cost. */
    static double[] duals(Tableau tableau) {
        double[] weights = new double[tableau.rows()];
        for (int j = 0; j < tableau.n; j++) {
            int row = tableau.outside[j] - tableau.n;
            if (row >= 0) {
                weights[row] = Math.max(0, tableau.costs[j]) * tableau.scale(row);
            }
        }
        return weights;
    }

    /** The weights with which rows add up to what cannot be, after the simplex was blocked: it is off by 1. */
    static double[] ray(Tableau tableau, DualSimplex simplex) {
        double[] weights = new double[tableau.rows()];
        int blocked = simplex.blocked();
        double sign = simplex.tooLow() ? -1 : 1;
        for (int j = 0; j < tableau.n; j++) {
            int row = tableau.outside[j] - tableau.n;
            if (row >= 0) {
                weights[row] = Math.max(0, sign * tableau.t[blocked][j]) * tableau.scale(row) / simplex.lacking();
            }
        }
        int own = tableau.basic[blocked] - tableau.n;
        if (own >= 0) {
            weights[own] = tableau.scale(own) / simplex.lacking();
        }
        return weights;
    }
}
