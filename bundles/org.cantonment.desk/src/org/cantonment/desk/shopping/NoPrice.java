package org.cantonment.desk.shopping;

import java.time.LocalDate;
import java.util.Optional;

import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.range.Box;

/** Why a box cannot be had on a day. */
final class NoPrice {
    private NoPrice() {
    }

    /** A whole sentence. */
    static String of(Id what, Shops shops) {
        Optional<Box> box = shops.market().catalogue().box(what);
        String title = shops.market().catalogue().title(what);
        LocalDate day = shops.day();
        if (shops.market().findings().stream().anyMatch(one -> one.at().card().equals(what))) {
            return "What " + title + " costs is in another currency, and no rate says on " + day + " what that is in "
                    + shops.currency() + ".";
        }
        if (box.isEmpty()) {
            return title + " is not on offer on " + day + ".";
        }
        Occasion on = Occasion.on(day);
        boolean sold = box.get().sold().isEmpty() || box.get().sold().stream().anyMatch(one -> one.covers(on, EraOrder.NONE));
        if (!sold) {
            return title + " is not on sale on " + day + ".";
        }
        if (box.get().prices().isEmpty()) {
            return "No price says what " + title + " costs.";
        }
        return box.get().prices().stream().anyMatch(one -> one.when().covers(on, EraOrder.NONE))
                ? title + " is not sold by those who were asked for." : "No price says what " + title + " costs on " + day + ".";
    }
}
