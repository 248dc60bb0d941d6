package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.buying.market.Ware;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Way;

/**
 * Boxes whose caps count handfuls of several sizes, or overlap, are told apart: what two of them can be built as is more
 * than twice what one can.
 */
final class Copies {

    /** So many of such a box are thought of at the most. */
    static final int MOST = 24;

    private Copies() {
    }

    static List<Ware> of(List<Ware> wares) {
        List<Ware> all = new ArrayList<>();
        for (Ware ware : wares) {
            if (plain(ware)) {
                all.add(ware);
            } else {
                Ware one = new Ware(ware.line(), ware.box(), ware.boxes(), ware.title(), ware.code(), ware.seller(),
                        ware.price(), ware.cost(), 1, ware.load(), ware.pieces());
                for (int i = 0; i < Math.min(MOST, ware.most()); i++) {
                    all.add(one);
                }
            }
        }
        return all;
    }

    private static boolean plain(Ware ware) {
        boolean[] under = new boolean[ware.load().frames().size()];
        for (BoxCap cap : ware.load().caps()) {
            int weight = 0;
            for (int at : cap.frames()) {
                if (under[at]) {
                    return false;
                }
                under[at] = true;
                for (Way way : ware.load().frames().get(at).ways()) {
                    int counts = Stores.weight(way, cap.of());
                    if (counts > 0 && weight > 0 && counts != weight) {
                        return false;
                    }
                    weight = Math.max(weight, counts);
                }
            }
        }
        return true;
    }
}
