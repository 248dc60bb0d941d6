package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Gathers what may fill a need; a type that may stand there in several ways stands in the one that was told first. */
final class TakerMaker {

    private int[] types = new int[0];
    private int[] tiers = new int[0];
    private int[] lines = new int[0];
    private final List<Taker.Share> shares = new ArrayList<>();

    /** @param more types in order */
    void direct(int[] more, int tier, int line) {
        int most = types.length + more.length;
        int[] allTypes = new int[most];
        int[] allTiers = new int[most];
        int[] allLines = new int[most];
        int size = 0;
        for (int had = 0, i = 0; had < types.length || i < more.length; size++) {
            if (had < types.length && (i == more.length || types[had] <= more[i])) {
                allTypes[size] = types[had];
                allTiers[size] = tiers[had];
                allLines[size] = lines[had];
                i += i < more.length && types[had] == more[i] ? 1 : 0;
                had++;
            } else {
                allTypes[size] = more[i++];
                allTiers[size] = tier;
                allLines[size] = line;
            }
        }
        types = size == most ? allTypes : Arrays.copyOf(allTypes, size);
        tiers = size == most ? allTiers : Arrays.copyOf(allTiers, size);
        lines = size == most ? allLines : Arrays.copyOf(allLines, size);
    }

    void share(Taker.Share share) {
        shares.add(share);
    }

    /** The taker, its types in order; its number is not told yet. */
    Taker make() {
        return new Taker(-1, types, tiers, lines, List.copyOf(shares));
    }
}
