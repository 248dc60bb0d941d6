package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds prices for needs: how much one more of each deficit would cost if edits could be taken in parts. The dual simplex
 * method with bounds on the variables. It reckons in floating point, which is safe: whatever prices come out, what is
 * concluded from them in whole numbers is a true bound, if not the best one.
 */
final class Simplex {

    private static final double TINY = 1e-9;
    private static final int MOST_STEPS = 200;

    private final int rows;
    private final int columns;
    private final double[][] table;
    private final double[] level;
    private final double[] ceiling;
    private final double[] cost;
    private final double[] bound;
    /** Which variable a column or row stands for: an edit, or after the edits the surplus of a need. */
    private final int[] columnOf;
    private final int[] rowOf;

    /**
     * @param effects by need and edit
     * @param most how often each edit may be taken
     */
    Simplex(double[] costs, double[][] effects, double[] deficits, double[] most) {
        rows = deficits.length;
        columns = costs.length;
        table = effects;
        level = new double[rows];
        ceiling = new double[rows];
        columnOf = new int[columns];
        rowOf = new int[rows];
        cost = costs.clone();
        bound = most.clone();
        for (int j = 0; j < columns; j++) {
            columnOf[j] = j;
        }
        for (int i = 0; i < rows; i++) {
            level[i] = -deficits[i];
            ceiling[i] = Double.POSITIVE_INFINITY;
            rowOf[i] = columns + i;
        }
    }

    /** The price of each need, at least 0. */
    double[] prices() {
        boolean going = true;
        for (int step = 0; step < MOST_STEPS && going; step++) {
            going = step();
        }
        double[] prices = new double[rows];
        for (int j = 0; j < columns; j++) {
            if (columnOf[j] >= columns) {
                prices[columnOf[j] - columns] = Math.max(0, cost[j]);
            }
        }
        return prices;
    }

    /** Mends the row that is furthest off; ends when none is, or when it cannot be mended. */
    private boolean step() {
        int row = -1;
        double worst = TINY * 1000;
        for (int i = 0; i < rows; i++) {
            double off = Math.max(-level[i], level[i] - ceiling[i]);
            if (off > worst) {
                worst = off;
                row = i;
            }
        }
        if (row < 0) {
            return false;
        }
        if (level[row] > 0) {
            turnRow(row);
        }
        return mend(row);
    }

    private boolean mend(int row) {
        List<Integer> helping = new ArrayList<>();
        double[] line = table[row];
        for (int j = 0; j < columns; j++) {
            if (line[j] > TINY) {
                helping.add(j);
            }
        }
        helping.sort(Comparator.comparingDouble((Integer j) -> Math.max(0, cost[j]) / line[j]).thenComparingInt(j -> j));
        double lacking = -level[row];
        for (int j : helping) {
            if (line[j] * bound[j] >= lacking) {
                pivot(row, j);
                return true;
            }
            lacking -= line[j] * bound[j];
            turnColumn(j);
        }
        return false;
    }

    /** A variable counted from its other end. */
    private void turnColumn(int column) {
        for (int i = 0; i < rows; i++) {
            level[i] += table[i][column] * bound[column];
            table[i][column] = -table[i][column];
        }
        cost[column] = -cost[column];
    }

    private void turnRow(int row) {
        level[row] = ceiling[row] - level[row];
        for (int j = 0; j < columns; j++) {
            table[row][j] = -table[row][j];
        }
    }

    private void pivot(int row, int column) {
        double[] line = table[row];
        double by = line[column];
        double shift = -level[row] / by;
        for (int j = 0; j < columns; j++) {
            line[j] = j == column ? 1 / by : -line[j] / by;
        }
        for (int i = 0; i < rows; i++) {
            double factor = table[i][column];
            if (i != row && factor != 0) {
                double[] other = table[i];
                for (int j = 0; j < columns; j++) {
                    other[j] = j == column ? factor * line[j] : other[j] + factor * line[j];
                }
                level[i] += factor * shift;
            }
        }
        double factor = cost[column];
        for (int j = 0; j < columns; j++) {
            cost[j] = j == column ? factor * line[j] : cost[j] + factor * line[j];
        }
        level[row] = shift;
        int variable = columnOf[column];
        columnOf[column] = rowOf[row];
        rowOf[row] = variable;
        double most = bound[column];
        bound[column] = ceiling[row];
        ceiling[row] = most;
    }
}
