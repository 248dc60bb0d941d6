package org.cantonment.stock.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.stock.turnout.Depot;

/** What a shelf can field of all formations there are, and how far it is from the rest. */
public final class Reach {

    private static final Comparator<FormationReach> NEAREST = Comparator
            .comparingInt((FormationReach one) -> lacking(one.least())).thenComparingInt(one -> lacking(one.most()));

    /** So many ways to fill a formation are looked at. */
    public static final int BRANCHES = 3_000;

    private Reach() {
    }

    /**
     * Every formation, nearest first; of those as near, in the order asked.
     *
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static List<FormationReach> of(Depot depot, List<Shape> shapes, CancelToken cancel) {
        return of(depot, shapes, BRANCHES, cancel);
    }

    /**
     * The same with another number of branches.
     *
     * @param branches so many ways to fill each formation are looked at, at the most
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public static List<FormationReach> of(Depot depot, List<Shape> shapes, int branches, CancelToken cancel) {
        List<FormationReach> all = new ArrayList<>();
        for (Shape shape : shapes) {
            all.add(new FormationReach(shape.formation(), Filling.of(depot, shape, false, branches, cancel),
                    Filling.of(depot, shape, true, branches, cancel)));
        }
        all.sort(NEAREST);
        return List.copyOf(all);
    }

    private static int lacking(Optional<Near> near) {
        return near.map(Near::lacking).orElse(Integer.MAX_VALUE);
    }
}
