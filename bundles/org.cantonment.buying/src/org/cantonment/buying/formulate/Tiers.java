package org.cantonment.buying.formulate;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.buying.market.Ware;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.solve.Preference;

/**
 * What is preferred among plans of the same cost: the fewest pieces bought, then the most points used where lists are chosen,
 * then the fewest boxes, then nothing sooner than it is wanted, then the least work where there is an end of it, then by code.
 */
record Tiers(Question question, List<Ware> wares, Purchases purchases, Choices choices, BenchRows bench) {

    Preference of(int columnCount) {
        long[] pieces = new long[columnCount];
        long[] boxes = new long[columnCount];
        long[] early = new long[columnCount];
        List<Integer> order = new ArrayList<>();
        for (int w = 0; w < wares.size(); w++) {
            int[] columns = purchases.columns(w);
            for (int s = 0; s < columns.length && columns[s] != Formulation.NONE; s++) {
                pieces[columns[s]] = wares.get(w).pieces();
                boxes[columns[s]] = wares.get(w).boxes();
                early[columns[s]] = (long) wares.get(w).boxes() * (columns.length - 1 - s);
                order.add(columns[s]);
            }
        }
        List<long[]> tiers = new ArrayList<>(List.of(pieces));
        if (question.targets().stream().anyMatch(target -> target.choice().isPresent())) {
            long[] unused = new long[columnCount];
            choices.weigh(unused);
            tiers.add(unused);
        }
        tiers.add(boxes);
        if (question.stages().size() > 1) {
            tiers.add(early);
        }
        if (question.benched()) {
            long[] work = new long[columnCount];
            bench.weigh(work);
            tiers.add(work);
        }
        return new Preference(tiers, order.stream().mapToInt(Integer::intValue).toArray());
    }
}
