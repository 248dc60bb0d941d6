package org.cantonment.buying.solve;

import java.util.Arrays;
import java.util.List;

/** Which of two columns is liked better where both do the same: by cost, then by what is preferred. */
final class Liking {

    private final Programme programme;
    private final List<long[]> tiers;
    private final int[] place;

    Liking(Programme programme, Preference preference) {
        this.programme = programme;
        tiers = preference.tiers();
        place = new int[programme.columns().size()];
        Arrays.fill(place, Integer.MAX_VALUE);
        for (int k = 0; k < preference.first().length; k++) {
            place[preference.first()[k]] = k;
        }
    }

    /** Whether nobody minds how great the column is. */
    boolean indifferent(int j) {
        return programme.columns().get(j).cost() == 0 && unweighed(j);
    }

    /** Whether nothing but its cost speaks for or against the column. */
    boolean unweighed(int j) {
        return place[j] == Integer.MAX_VALUE && tiers.stream().allMatch(tier -> tier[j] == 0);
    }

    /** Below 0 if one of j is liked better than one of k, 0 if none is; above 0 else, and where it depends. */
    int compare(int j, int k) {
        int order = Long.compare(programme.columns().get(j).cost(), programme.columns().get(k).cost());
        for (int t = 0; order == 0 && t < tiers.size(); t++) {
            order = Long.compare(tiers.get(t)[j], tiers.get(t)[k]);
        }
        if (order != 0 || place[j] == place[k]) {
            return order;
        }
        return place[j] < place[k] && place[k] != Integer.MAX_VALUE ? -1 : 1;
    }
}
