package org.cantonment.rules.muster;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.common.CancelToken;

/** A muster with everybody placed. */
public record Layout(Muster muster, List<Billeting> billetings, Supporting supporting) {

    /**
     * Places everybody.
     *
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static Layout of(Muster muster, CancelToken cancel) {
        List<Billeting> billetings = new ArrayList<>();
        for (Node node : muster.nodes()) {
            if (node.formation() != null) {
                billetings.add(Billeting.of(muster, node, cancel));
            }
        }
        return new Layout(muster, billetings, Supporting.of(muster, cancel));
    }
}
