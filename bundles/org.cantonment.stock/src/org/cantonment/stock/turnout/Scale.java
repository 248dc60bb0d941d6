package org.cantonment.stock.turnout;

import java.util.Arrays;

import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.turnout.Instance.Direct;

/**
 * What makes a turnout worse than another, the gravest first, as one price: a path through a network meets each class
 * once, so no part can outgrow the next graver one. In networks too big for all parts the slightest are left out.
 */
final class Scale {

    static final int TIERS = 6;
    static final int NOT_EXACT = 0;
    static final int NOT_KINDRED = 1;
    static final int CONVERTED = 2;
    static final int OTHERWISE = 3;
    static final int GUESSED = 4;
    static final int BUILT = 5;

    private final long[] weight = new long[TIERS];

    private Scale() {
    }

    /** @param priced whether it matters how good a turnout is, not only how many stand */
    static Scale of(Instance in, boolean priced) {
        Scale scale = new Scale();
        if (priced) {
            scale.weigh(2L * (2L * in.classes().size() + 2L * in.hubs().size() + 4), matter(in));
        }
        return scale;
    }

    private void weigh(long base, boolean[] matter) {
        long price = 1;
        int fits = 0;
        int last = 0;
        for (int i = 0; i < TIERS && price < Long.MAX_VALUE / 64 / base; i++) {
            if (matter[i]) {
                price *= base;
                fits++;
            }
            last = i;
        }
        for (int i = 0; i <= last && fits > 0; i++) {
            if (matter[i]) {
                price /= base;
                weight[i] = price;
                fits--;
            }
        }
    }

    /** What can differ here at all. */
    private static boolean[] matter(Instance in) {
        boolean[] matter = new boolean[TIERS];
        for (Direct direct : in.direct()) {
            for (int tier : direct.tiers()) {
                matter[NOT_EXACT] |= tier > 0;
                matter[NOT_KINDRED] |= tier > 1;
            }
        }
        boolean more = !in.hubs().isEmpty() || !in.turns().isEmpty();
        matter[NOT_EXACT] |= more;
        matter[NOT_KINDRED] |= more;
        matter[CONVERTED] = !in.turns().isEmpty();
        matter[OTHERWISE] = in.remembers();
        matter[GUESSED] = Arrays.stream(in.guessed()).anyMatch(count -> count > 0)
                || in.lumps().stream().anyMatch(lump -> lump.frames().guessed());
        matter[BUILT] = !in.lumps().isEmpty();
        return matter;
    }

    /** What one of this costs. */
    long weight(int tier) {
        return weight[tier];
    }

    /** What a piece so true costs where it stands. */
    long price(Truth truth) {
        return switch (truth) {
            case EXACT -> 0;
            case KINDRED -> weight[NOT_EXACT];
            case STAND_IN -> weight[NOT_EXACT] + weight[NOT_KINDRED];
            case CONVERSION -> weight[NOT_EXACT] + weight[NOT_KINDRED] + weight[CONVERTED];
        };
    }
}
