package org.cantonment.buying.solve;

/** Work that is left for what is worth only so much of it, counted in entries of tables that exchanges go through. */
final class Budget {

    private long left;

    Budget(long work) {
        left = work;
    }

    private static long size(Programme programme) {
        return (programme.rows().size() + 4L) * (programme.columns().size() + 1);
    }

    /** So many exchanges are left in tables of this size. */
    long pivots(Programme programme) {
        return left / size(programme);
    }

    void spend(Programme programme, long pivots) {
        left -= size(programme) * (pivots + 1);
    }
}
