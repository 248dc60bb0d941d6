package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.growth.Growth.Account;
import org.cantonment.buying.growth.Growth.Shortfall;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.shelf.BenchTime.Measure;

/** What to buy before which round, in words: for a terminal, and short enough for a chat. */
public final class GrowText {
    private final GrowAnswer answer;
    private final PlanText plans;

    /** Of an answer. */
    public GrowText(GrowAnswer answer) {
        this.answer = answer;
        this.plans = new PlanText(answer.shops().market().catalogue());
    }

    /** "Ombra, rounds 1, 2 and 3, by prices of 2031-03-01 (as asked); budgets as asked, saved up." */
    public String heading() {
        List<String> numbers = answer.steps().stream().map(step -> String.valueOf(step.round())).toList();
        String money = answer.why().equals(Purse.ENDLESS) ? Purse.ENDLESS : "budgets " + answer.why()
                + (answer.saved() ? ", saved up" : ", not saved up");
        return answer.shopper().title() + (numbers.size() == 1 ? ", round " : ", rounds ") + PlanText.and(numbers)
                + ", by prices of " + answer.shops().day() + " (" + answer.shops().why() + "); " + money + answer.bench() + ".";
    }

    /** All of it, a line for each thing. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        lines.add("");
        if (answer.plan().isEmpty()) {
            lines.addAll(none());
            return lines;
        }
        Plan plan = answer.plan().get();
        lines.add("In all: " + Cash.text(plan.total()) + ". " + proof(plan));
        for (int stage = 0; stage < answer.steps().size(); stage++) {
            lines.addAll(step(plan, stage));
        }
        lines.add("");
        lines.add("Left over: " + plans.leftovers(plan) + ".");
        lines.addAll(advice());
        lines.addAll(remarks());
        return lines;
    }

    /** How sure it is that nothing costs less, and how the lists were come by. */
    public String proof(Plan plan) {
        return PlanText.proof(plan) + switch (answer.growth().lists()) {
            case GIVEN -> "";
            case BEST_OF_TRIED -> " The lists that were composed are the best of those that were tried.";
            case GOOD -> " That is said of these lists: those that were composed were chosen one after the other, and others may"
                    + " cost less.";
        };
    }

    /** A round: its list, what is bought and built before it, the money. */
    public List<String> step(Plan plan, int stage) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        Step step = answer.steps().get(stage);
        lines.add(title(step) + (step.out().isEmpty() ? money(answer.growth().accounts().get(stage)) + bench(plan, stage)
                : "; left out"));
        lines.addAll(inner(plan, stage));
        return lines;
    }

    /** What belongs to a round, indented by two blanks. */
    public List<String> inner(Plan plan, int stage) {
        Step step = answer.steps().get(stage);
        List<String> lines = new ArrayList<>();
        if (!step.out().isEmpty()) {
            step.out().forEach(why -> lines.add("  " + why));
            return lines;
        }
        lines.add((step.composed() ? "  Composed: " : "  ") + step.words() + ".");
        step.breaches().forEach(finding -> lines.add("  Not legal: " + finding.message()));
        step.cautions().forEach(finding -> lines.add("  Caution: " + finding.message()));
        List<String> orders = plans.orders(plan, stage);
        lines.addAll(orders.isEmpty() ? List.of("  Nothing need be bought.") : orders);
        plans.builds(plan, stage).forEach(build -> lines.add("  Build " + build + "."));
        for (int i = 0; i < plan.fielded().size(); i++) {
            if (plan.fielded().get(i).stage() == stage) {
                lines.add("  Fielded: " + plans.turnout(plan.turnouts().get(i)) + ".");
                plans.alone(plan, i).forEach(build -> lines.add("  " + build + "."));
            }
        }
        return lines;
    }

    /** "Round 2, The first reeds: 57 of 60 points". */
    public String title(Step step) {
        return "Round " + step.round() + (step.title().isEmpty() ? "" : ", " + step.title())
                + step.verdict().map(one -> ": " + one.points() + (step.limit().isPresent()
                        ? " of " + step.limit().getAsInt() : "") + " points").orElse("");
    }

    /** "; 22.00 of 25.00 EUR spent, 3.00 EUR in hand", or what was spent of no end of money. */
    public static String money(Account account) {
        return "; " + account.available().map(most -> Amounts.text(account.paid()) + " of " + Cash.text(most))
                .orElse(Cash.text(account.paid())) + " spent" + account.inHand().map(left -> ", " + Cash.text(left) + " in hand")
                        .orElse("");
    }

    /** "; 3 hours 20 minutes of 6 hours at the bench", or nothing if nothing is known of it. */
    public String bench(Plan plan, int stage) {
        String work = PlanText.work(plan.work().get(stage), answer.steps().get(stage).bench());
        return work.isEmpty() ? "" : "; " + work;
    }

    /** Why there is no plan. */
    public List<String> none() {
        List<String> lines = new ArrayList<>();
        answer.steps().forEach(step -> lines.addAll(step.out()));
        if (answer.steps().stream().anyMatch(step -> step.out().isEmpty())) {
            lines.addAll(none(answer.growth()));
        } else {
            lines.add("So there is no plan.");
        }
        for (Step step : answer.steps()) {
            step.breaches().forEach(finding -> lines.add("Round " + step.round() + " is not legal: " + finding.message()));
        }
        answer.shops().leftOut().ifPresent(lines::add);
        lines.addAll(answer.shopper().remarks());
        return lines;
    }

    private List<String> none(Growth growth) {
        List<String> lines = new ArrayList<>();
        if (growth.shortfall().isPresent()) {
            lines.add(shortfall(growth.shortfall().get()));
        } else if (growth.answer().impossible()) {
            lines.add(growth.lists() == Growth.Lists.GIVEN ? "There is no plan." : "There is no plan with the lists that were tried"
                    + " for the rounds whose lists are composed; with others there may be one.");
            growth.answer().findings().stream().filter(one -> !one.code().equals(Shops.NO_RATE)).map(Finding::message).distinct().forEach(lines::add);
        } else {
            lines.add("Stopped before a plan was found" + growth.answer().bound().map(bound -> "; nothing costs less than "
                    + Cash.text(bound)).orElse("") + ".");
        }
        return lines;
    }

    /** "No plan: round 2 is short 2.00 EUR (12.00 EUR is needed, 10.00 EUR is there)." */
    public String shortfall(Shortfall shortfall) {
        int round = answer.steps().get(shortfall.stage()).round();
        String sums = " (" + Amounts.text(shortfall.needed()) + " is needed, " + Amounts.text(shortfall.available())
                + " is there at the most)." + (answer.growth().lists() == Growth.Lists.GIVEN ? "" : " That is said of the lists that"
                        + " were tried for the rounds whose lists are composed; others may cost less.");
        return shortfall.settled() ? "No plan: round " + round + " is short " + Cash.text(shortfall.missing()) + sums
                : "No plan: all rounds until round " + round + " together are short " + Cash.text(shortfall.missing())
                        + " at the least" + sums;
    }

    /** What looking ahead saves, and what a little more money would. */
    public List<String> advice() {
        List<String> lines = new ArrayList<>();
        Growth growth = answer.growth();
        Plan plan = answer.plan().orElseThrow();
        growth.stepwise().filter(cost -> cost.isGreaterThan(plan.total())).ifPresent(cost -> lines.add(
                "What is cheapest for " + round(0) + " alone leads to " + Cash.text(cost) + " at best."));
        growth.advice().ifPresent(one -> lines.add("With " + Cash.text(one.more()) + " more in " + round(0)
                + " it all costs " + Cash.text(one.saves()) + " less."));
        return lines;
    }

    private String round(int stage) {
        return "round " + answer.steps().get(stage).round();
    }

    /** What was taken into account, and left out. */
    public List<String> remarks() {
        List<String> lines = new ArrayList<>(answer.shopper().remarks());
        answer.plan().map(plan -> plans.untimed(plan, answer.steps().stream().flatMap(step -> step.bench().stream())
                .anyMatch(bench -> bench.measure() == Measure.MINUTES))).filter(line -> !line.isEmpty()).ifPresent(lines::add);
        answer.shops().leftOut().ifPresent(lines::add);
        if (answer.stopped()) {
            lines.add("The search was ended before it was through.");
        }
        return lines;
    }

    /** The answer for a chat. */
    public String reply() {
        Reply reply = new Reply();
        if (answer.plan().isEmpty()) {
            none().forEach(reply::say);
            return reply.toString();
        }
        Plan plan = answer.plan().get();
        reply.say("In all " + Cash.text(plan.total()) + (plan.proven() ? "." : ", the best found."));
        for (int stage = 0; stage < answer.steps().size(); stage++) {
            int at = stage;
            List<Purchase> bought = plan.purchases().stream().filter(one -> one.stage() == at).toList();
            boolean out = !answer.steps().get(stage).out().isEmpty();
            reply.say("Round " + answer.steps().get(stage).round() + ": " + (out ? "left out" : plans.boxes(bought)
                    + (bought.isEmpty() ? "" : ", " + Amounts.text(plan.paid(stage)))) + ".");
        }
        List<String> builds = plans.builds(plan);
        reply.say(builds.isEmpty() ? "" : "Build " + String.join("; ", builds) + ".");
        reply.say(PlanText.bench(plan));
        reply.say("Left over: " + plans.leftovers(plan) + ".");
        advice().forEach(reply::say);
        return reply.toString();
    }
}
