package org.cantonment.stock.turnout;

import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Instance.Arc;
import org.cantonment.stock.turnout.Instance.Hub;

/**
 * What makes a turnout worse than another, the gravest first, as one price: a path through a network meets each class
 * once, so no part can outgrow the next graver one. In networks too big for all parts the slightest are left out.
 */
final class Scale {

    static final int TIERS = 6;
    static final int LENT = 0;
    static final int NOT_EXACT = 1;
    static final int NOT_KINDRED = 2;
    static final int CONVERTED = 3;
    static final int GUESSED = 4;
    static final int BUILT = 5;

    private final long[] weight = new long[TIERS];

    private Scale() {
    }

    /** @param priced whether it matters how good a turnout is, not only how many stand */
    static Scale of(Instance in, boolean priced) {
        Scale scale = new Scale();
        if (priced) {
            scale.weigh(2L * (2L * in.classes().size() + 2L * in.hubs().size() + 4), lends(in) ? LENT : NOT_EXACT);
        }
        return scale;
    }

    private void weigh(long base, int first) {
        long price = 1;
        int fits = 0;
        while (fits < TIERS - first && price < Long.MAX_VALUE / 64 / base) {
            price *= base;
            fits++;
        }
        for (int i = first; i < first + fits; i++) {
            price /= base;
            weight[i] = price;
        }
    }

    private static boolean lends(Instance in) {
        for (Arc[] arcs : in.direct()) {
            for (Arc arc : arcs) {
                if (arc.lent()) {
                    return true;
                }
            }
        }
        for (Hub hub : in.hubs()) {
            for (boolean lent : hub.lent()) {
                if (lent) {
                    return true;
                }
            }
        }
        return false;
    }

    /** What one of this costs. */
    long weight(int tier) {
        return weight[tier];
    }

    /** What a piece so true costs where it stands. */
    long price(Truth truth, boolean lent) {
        long price = lent ? weight[LENT] : 0;
        return switch (truth) {
            case EXACT -> price;
            case KINDRED -> price + weight[NOT_EXACT];
            case STAND_IN -> price + weight[NOT_EXACT] + weight[NOT_KINDRED];
            case CONVERSION -> price + weight[NOT_EXACT] + weight[NOT_KINDRED] + weight[CONVERTED];
        };
    }
}
