package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gathers what may fill a need; a type that may stand there in several ways stands in the one that was told first. */
final class TakerMaker {

    private int[] types = new int[16];
    private int[] tiers = new int[16];
    private int[] lines = new int[16];
    private int size;
    private boolean inOrder = true;
    private final List<Taker.Share> shares = new ArrayList<>();

    void direct(int type, int tier, int line) {
        if (size == types.length) {
            types = Arrays.copyOf(types, 2 * size);
            tiers = Arrays.copyOf(tiers, 2 * size);
            lines = Arrays.copyOf(lines, 2 * size);
        }
        inOrder &= size == 0 || types[size - 1] < type;
        types[size] = type;
        tiers[size] = tier;
        lines[size++] = line;
    }

    void share(Taker.Share share) {
        shares.add(share);
    }

    /** The taker, its types in order; its number is not told yet. */
    Taker make() {
        if (!inOrder) {
            order();
        }
        return new Taker(-1, Arrays.copyOf(types, size), Arrays.copyOf(tiers, size), Arrays.copyOf(lines, size),
                List.copyOf(shares));
    }

    private void order() {
        long[] order = new long[size];
        for (int i = 0; i < size; i++) {
            order[i] = ((long) types[i] << Integer.SIZE) + i;
        }
        Arrays.sort(order);
        TakerMaker ordered = new TakerMaker();
        int last = -1;
        for (long one : order) {
            int i = (int) one;
            if (types[i] != last) {
                last = types[i];
                ordered.direct(last, tiers[i], lines[i]);
            }
        }
        types = ordered.types;
        tiers = ordered.tiers;
        lines = ordered.lines;
        size = ordered.size;
    }
}
