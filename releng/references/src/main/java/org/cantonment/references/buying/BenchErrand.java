package org.cantonment.references.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.MarketMaker;
import org.cantonment.buying.market.Rates;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Range;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;
import org.joda.money.CurrencyUnit;

/** A list for each of some stages, whose parts take their time to build, and an end of time and money in some of them. */
public record BenchErrand(Range range, Supply shelf, List<List<Requirement>> lists, List<Stage> stages, boolean saved) {

    /** The question as our planner is asked. */
    public Question question() {
        Market market = MarketMaker.on(Errand.DAY, List.of(range), List.of(),
                Rates.on(List.of(), Errand.DAY, CurrencyUnit.EUR));
        List<Target> targets = new ArrayList<>();
        for (int s = 0; s < lists.size(); s++) {
            targets.add(new Target(Id.of("List-" + s), "list " + s, s, lists.get(s), Allowance.EXACT));
        }
        return new Question(market, shelf, targets, stages, saved, Map.of());
    }

    /** The same with only the first stages. */
    public BenchErrand until(int stage) {
        return new BenchErrand(range, shelf, lists.subList(0, stage + 1), stages.subList(0, stage + 1), saved);
    }

    /** The same with no end of time at the bench. */
    public BenchErrand idle() {
        return new BenchErrand(range, shelf, lists, stages.stream().map(Stage::withoutBench).toList(), saved);
    }
}
