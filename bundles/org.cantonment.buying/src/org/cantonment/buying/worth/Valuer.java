package org.cantonment.buying.worth;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.worth.Worth.ExtraWorth;
import org.cantonment.buying.worth.Worth.ToPlayer;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Extra;
import org.cantonment.domain.range.Range;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Finds out what a box is worth. Holds no state that outlives a question. */
public final class Valuer {

    private final Collection<Range> ranges;
    private final Market market;
    private final CurrencyUnit currency;
    private final CancelToken cancel;
    private final Progress progress;
    private final List<Finding> findings = new ArrayList<>();

    private Valuer(Collection<Range> ranges, Market market, CurrencyUnit currency, CancelToken cancel, Progress progress) {
        this.ranges = ranges;
        this.market = market;
        this.currency = currency;
        this.cancel = cancel;
        this.progress = progress;
    }

    /**
     * What a box is worth.
     *
     * @param ranges for what is a bundle, and for what extras are said to be worth
     * @param player what a player has and wants; empty if nobody is asked about. Its market is not looked at
     * @param currency the currency of account that the market was reckoned in
     */
    public static Worth of(Id box, Collection<Range> ranges, Market market, Optional<Question> player,
            CurrencyUnit currency, CancelToken cancel, Progress progress) {
        return new Valuer(ranges, market, currency, cancel, progress).value(box, player);
    }

    private Worth value(Id box, Optional<Question> player) {
        String title = market.catalogue().title(box);
        Optional<Ware> ware = market.wares().stream().filter(one -> one.box().equals(box) && one.boxes() == 1)
                .min(Comparator.comparing(this::cost));
        if (ware.isEmpty()) {
            String why = !market.catalogue().knows(box) ? "Nothing of this name is known."
                    : title + " is not on sale on that day, or no price says what it costs.";
            findings.add(Finding.of("worth.no-price", Severity.CAUTION, box, why));
            return new Worth(box, title, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of(),
                    Optional.empty(), Optional.empty(), findings);
        }
        Money price = cost(ware.get());
        Market singles = singles(box);
        Contents contents = new Contents(market, ware.get().load());
        if (!contents.unsure().isEmpty()) {
            findings.add(Finding.of("worth.unsure", Severity.NOTE, box, "What may lie in it is not counted: "
                    + String.join(", ", contents.unsure()) + "."));
        }
        List<ExtraWorth> extras = contents.extras().entrySet().stream()
                .map(one -> extra(one.getKey(), one.getValue(), singles)).toList();
        Answer yielding = ask(Question.of(singles, Supply.NONE, List.of(target(box, title, contents.needs()))));
        Optional<Plan> same = yielding.plan();
        if (yielding.impossible()) {
            findings.add(Finding.of("worth.no-singles", Severity.NOTE, box,
                    "No single boxes on sale yield the pieces of " + title + "."));
        }
        Optional<Money> saving = same.map(plan -> plan.total().minus(price));
        return new Worth(box, title, Optional.of(price), Optional.of(ware.get().cost()), same, saving, extras,
                saving.flatMap(one -> withExtras(box, title, price, contents, extras, singles)),
                player.flatMap(one -> toPlayer(box, one)), findings);
    }

    /** What one of it costs with postage and discount. */
    private Money cost(Ware ware) {
        return Planner.cost(Question.of(market, Supply.NONE, List.of()), List.of(new Purchase(ware, 1, 0)), currency);
    }

    private static Target target(Id box, String title, List<Requirement> needs) {
        return Target.now(box, title, needs, Allowance.EXACT);
    }

    private Optional<Plan> cheapest(Market from, Supply shelf, List<Target> targets) {
        return plan(Question.of(from, shelf, targets));
    }

    private Optional<Plan> plan(Question question) {
        return ask(question).plan();
    }

    private Answer ask(Question question) {
        return Planner.plan(question, currency, cancel, progress);
    }

    /** Boxes that are no bundles and no lots, other than the box itself. */
    private Market singles(Id box) {
        Set<Id> not = new TreeSet<>();
        not.add(box);
        for (Range range : ranges) {
            range.boxes().stream().filter(one -> one.bundle()).forEach(one -> not.add(one.id()));
            range.sellers().forEach(seller -> seller.lots().forEach(lot -> not.add(lot.id())));
        }
        return market.without(not);
    }

    private ExtraWorth extra(Id extra, int count, Market singles) {
        Optional<Money> price = singles.wares().stream().anyMatch(ware -> brings(ware, extra))
                ? cheapest(singles, Supply.NONE, List.of(target(extra, extra.name(), List.of(need(extra, count)))))
                        .map(Plan::total) : Optional.empty();
        if (price.isPresent()) {
            return new ExtraWorth(extra, count, price, true);
        }
        Optional<Money> said = ranges.stream().flatMap(range -> range.extras().stream())
                .filter(one -> one.id().equals(extra)).findFirst().flatMap(Extra::worth)
                .filter(one -> one.getCurrencyUnit().equals(currency)).map(one -> one.multipliedBy(count));
        return new ExtraWorth(extra, count, said, false);
    }

    private static boolean brings(Ware ware, Id what) {
        return ware.load().stacks().stream().anyMatch(stack -> stack.what().equals(what) && stack.counted() > 0);
    }

    private static Requirement need(Id what, int count) {
        return new Requirement(what, count, List.of(what));
    }

    /** The saving if the extras are bought singly, too, or are worth to the player what the range says. */
    private Optional<Money> withExtras(Id box, String title, Money price, Contents contents, List<ExtraWorth> extras,
            Market singles) {
        List<Requirement> needs = new ArrayList<>(contents.needs());
        Money said = Money.zero(currency);
        for (ExtraWorth extra : extras) {
            if (extra.sold()) {
                needs.add(need(extra.extra(), extra.count()));
            } else {
                said = said.plus(extra.value().orElse(Money.zero(currency)));
            }
        }
        Money worth = said;
        return cheapest(singles, Supply.NONE, List.of(target(box, title, needs)))
                .map(plan -> plan.total().plus(worth).minus(price));
    }

    private Optional<ToPlayer> toPlayer(Id box, Question player) {
        Question asked = player.with(market);
        Answer offered = ask(asked);
        Optional<Plan> with = offered.plan();
        if (with.isEmpty()) {
            if (offered.impossible()) {
                findings.add(Finding.of("worth.no-way", Severity.NOTE, box,
                        "What the player wants cannot be had, with this box or without it."));
                offered.findings().stream().filter(one -> !market.findings().contains(one)).forEach(findings::add);
            }
            return Optional.empty();
        }
        Optional<Plan> without = plan(asked.with(market.without(List.of(box))));
        Map<Id, Integer> forced = new TreeMap<>(player.atLeast());
        forced.merge(box, 1, Math::max);
        Optional<Plan> made = plan(asked.buying(forced));
        return Optional.of(new ToPlayer(without, with.get(),
                without.map(plan -> plan.total().minus(with.get().total())), made,
                made.map(plan -> plan.total().minus(with.get().total()))));
    }
}
