package org.cantonment.references.buying;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.MarketMaker;
import org.cantonment.buying.market.Rates;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.supply.Supply;
import org.joda.money.CurrencyUnit;

/** A question about buying in the domain's own records: what is sold, what is owned, what lists need, what may stand in. */
public record Errand(Range range, Shelf shelf, List<List<Requirement>> lists, Likeness card) {

    /** The day of the purchase. */
    public static final LocalDate DAY = LocalDate.of(2031, 3, 1);

    /** The question as our planner is asked. */
    public Question question() {
        Market market = MarketMaker.on(DAY, List.of(range), List.of(), Rates.on(List.of(), DAY, CurrencyUnit.EUR));
        Allowance allowance = Allowance.of(market.catalogue(), List.of(card), Optional.empty(), Terms.ANY);
        List<Target> targets = new ArrayList<>();
        for (List<Requirement> list : lists) {
            targets.add(Target.now(Id.of("List-" + targets.size()), "list " + targets.size(), list, allowance));
        }
        return Question.of(market, Supply.of(market.catalogue(), List.of(shelf)), targets);
    }
}
