package org.cantonment.rules.guest;

import java.util.ArrayList;
import java.util.List;

/** Lists of foreign make, which may be anything behind their names. */
final class Foreign {

    private Foreign() {
    }

    /** @return a list of our own with the same things; null if there is none, if it is longer, or if something is missing */
    static <T> List<T> copy(List<T> foreign, int most) {
        if (foreign == null) {
            return null;
        }
        List<T> copy = new ArrayList<>();
        for (T each : foreign) {
            if (each == null || copy.size() == most) {
                return null;
            }
            copy.add(each);
        }
        return copy;
    }
}
