package org.cantonment.buying.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.market.Market;
import org.cantonment.buying.market.Ware;
import org.cantonment.buying.solve.Limits;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Solver;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Accepted;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Says why there is no plan: what nobody sells, what has no price, what there is too little of, what the money is short. */
final class Lack {

    private final Question question;
    private final Market market;
    private final CurrencyUnit currency;
    private final Limits limits;
    private final CancelToken cancel;
    private final List<Finding> findings;

    Lack(Question question, CurrencyUnit currency, Limits limits, CancelToken cancel) {
        this.question = question;
        this.market = question.market();
        this.currency = currency;
        this.limits = limits;
        this.cancel = cancel;
        findings = new ArrayList<>(market.findings());
    }

    /** What there is to say; when it is cancelled, less of it. */
    List<Finding> findings() {
        try {
            find();
        } catch (Cancelled enough) {
            return findings;
        }
        return findings;
    }

    /** "34.00 EUR". */
    static String text(Money money) {
        return Amounts.text(money) + " " + money.getCurrencyUnit().getCode();
    }

    private void find() {
        int before = findings.size();
        Set<Id> sold = new TreeSet<>();
        market.wares().forEach(ware -> sold.addAll(giving(ware.load())));
        for (Target target : question.targets()) {
            cancel.check();
            Set<Id> had = new TreeSet<>(sold);
            had.addAll(giving(question.shelves().get(target.person())));
            if (target.choice().isEmpty()) {
                target.needs().forEach(need -> check(target, need, had));
                few(target, sold);
            }
        }
        question.atLeast().keySet().stream().filter(box -> market.cheapest(box).isEmpty())
                .forEach(box -> find("buying.no-price", box, market.catalogue().title(box)
                        + " is asked for, and it is not on sale, or no price says what it costs."));
        if (findings.size() == before) {
            money();
        }
        if (findings.size() == before) {
            tooFew();
        }
    }

    private void find(String code, Id at, String message) {
        findings.add(Finding.of(code, Severity.CAUTION, at, message));
    }

    private static Set<Id> giving(Supply supply) {
        Set<Id> types = new TreeSet<>();
        supply.stacks().stream().filter(stack -> stack.counted() > 0).forEach(stack -> types.add(stack.what()));
        supply.frames().forEach(frames -> {
            types.add(frames.part());
            frames.ways().forEach(way -> types.addAll(way.yields().keySet()));
        });
        return types;
    }

    private void check(Target target, Requirement need, Set<Id> had) {
        if (need.count() < 1 || need.anyOf().stream().anyMatch(market.catalogue()::isItem)) {
            return;
        }
        Set<Id> types = types(target, need);
        boolean worked = worked(target, types).stream().anyMatch(turn -> had.containsAll(turn.from().keySet()));
        if (worked || types.stream().anyMatch(had::contains)) {
            return;
        }
        Optional<String> unpriced = unpriced(types);
        if (unpriced.isEmpty()) {
            find("buying.nobody-sells", need.entry(), target.title() + " needs " + need.count() + " of " + names(need)
                    + "; nobody sells it or anything that may stand for it, and none is there.");
        } else {
            find("buying.no-price", need.entry(), target.title() + " needs " + need.count() + " of " + names(need)
                    + "; what holds it is not on sale on that day, or no price says what it costs in " + currency + ": " + unpriced.get() + ".");
        }
    }

    /** The boxes that hold any of these and have no price on that day; empty if there are none. */
    private Optional<String> unpriced(Set<Id> types) {
        return Optional.of(market.unpriced().entrySet().stream()
                .filter(one -> giving(one.getValue()).stream().anyMatch(types::contains))
                .map(one -> market.catalogue().title(one.getKey())).collect(Collectors.joining(", ")))
                .filter(titles -> !titles.isEmpty());
    }

    /** What nobody sells, and there is some of it, but too little. */
    private void few(Target target, Set<Id> sold) {
        Map<Set<Id>, Integer> wanted = new LinkedHashMap<>();
        Map<Set<Id>, Requirement> first = new HashMap<>();
        for (Requirement need : target.needs()) {
            Set<Id> types = types(target, need);
            if (need.count() > 0 && need.anyOf().stream().noneMatch(market.catalogue()::isItem)
                    && types.stream().noneMatch(sold::contains) && worked(target, types).isEmpty()) {
                wanted.merge(types, need.count(), Integer::sum);
                first.putIfAbsent(types, need);
            }
        }
        wanted.forEach((types, count) -> {
            long there = there(question.shelves().get(target.person()), types);
            if (there > 0 && there < count) {
                Requirement need = first.get(types);
                String lead = target.title() + " needs " + count + " of " + names(need) + "; there are " + there
                        + " at the most, and ";
                unpriced(types).ifPresentOrElse(boxes -> find("buying.no-price", need.entry(), lead + "what holds it is not on"
                        + " sale on that day, or no price says what it costs in " + currency + ": " + boxes + "."),
                        () -> find("buying.nobody-sells", need.entry(), lead + "nobody sells it or anything that may stand for"
                                + " it."));
            }
        });
    }

    private Set<Id> types(Target target, Requirement need) {
        Accepted accepted = target.allowance().accepted(market.catalogue(), need.anyOf(), need.unit());
        Set<Id> types = new TreeSet<>(accepted.types().keySet());
        accepted.standIns().values().forEach(types::addAll);
        return types;
    }

    private static List<Conversion> worked(Target target, Set<Id> types) {
        return target.allowance().conversions().stream().filter(turn -> types.contains(turn.to())).toList();
    }

    /** No more of these than so many are there, however parts are built. */
    private static long there(Supply shelf, Set<Id> types) {
        long there = shelf.stacks().stream().filter(stack -> types.contains(stack.what())).mapToLong(Stack::counted).sum();
        for (Frames frames : shelf.frames()) {
            there += frames.count() * Math.max(types.contains(frames.part()) ? 1 : 0, frames.ways().stream().mapToLong(way ->
                    way.gives().entrySet().stream().filter(one -> types.contains(one.getKey())).mapToLong(Map.Entry::getValue)
                            .sum()).max().orElse(0));
        }
        return there;
    }

    private String names(Requirement need) {
        return need.anyOf().stream().map(market.catalogue()::title).collect(Collectors.joining(" or "));
    }

    private Outcome solve(Question asked) {
        Outcome outcome = Solver.solve(new Formulation(asked, cancel).programme(), limits, cancel, Progress.SILENT);
        cancel.check();
        return outcome;
    }

    private void money() {
        if (question.stages().stream().allMatch(stage -> stage.budget().isEmpty())) {
            return;
        }
        List<Stage> open = question.stages().stream().map(Stage::withoutBudget).toList();
        Outcome outcome = solve(question.with(open, false));
        if (outcome.found()) {
            Money budget = question.stages().stream().flatMap(stage -> stage.budget().stream())
                    .reduce(Money.zero(currency), Money::plus);
            Money cost = Money.ofMinor(currency, outcome.bound());
            find("buying.budget", question.targets().get(0).id(), cost.isGreaterThan(budget)
                    ? "It costs " + text(cost) + " at the least; the budget is " + text(budget) + "."
                    : "It costs " + text(cost) + " at the least, which is within " + text(budget)
                            + " in all, but not when the money is there.");
        }
    }

    private void tooFew() {
        int before = findings.size();
        boolean eachCan = true;
        for (Target target : question.targets()) {
            Outcome alone = target.choice().isPresent() ? null : solve(question.with(List.of(target)).buying(Map.of()));
            eachCan &= alone == null || alone.found();
            if (alone != null && alone.state() == Outcome.State.IMPOSSIBLE) {
                find("buying.too-few", target.id(), "All that is there and all that is on sale in time is not enough for "
                        + target.title() + limited() + bench() + ".");
            }
        }
        if (findings.size() == before) {
            find("buying.not-together", question.targets().isEmpty() ? Id.of("buying") : question.targets().get(0).id(),
                    (eachCan ? "Each target alone can be had, but not all together: what one builds or works over another lacks"
                            : "They cannot be had all together; whether each of them can alone was not settled")
                            + limited() + bench() + ".");
        }
    }

    private String limited() {
        List<Ware> few = market.wares().stream().filter(ware -> ware.most() < 10_000).toList();
        if (few.isEmpty()) {
            return "";
        }
        return "; there is an end of " + few.stream().limit(5)
                .map(ware -> ware.title() + " (" + ware.most() + " left)").collect(Collectors.joining(", "))
                + (few.size() > 5 ? " and " + (few.size() - 5) + " more" : "");
    }

    private String bench() {
        return question.stages().stream().allMatch(stage -> stage.bench().isEmpty()) ? ""
                : "; or there are too few hours at the bench";
    }
}
