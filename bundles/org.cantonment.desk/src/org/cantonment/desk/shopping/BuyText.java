package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Priorities.Left;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.finding.Finding;

/** What to buy next, in words: for a terminal, and short enough for a chat. */
public final class BuyText {
    private static final int REPLY_LISTS = 4;

    private final BuyAnswer answer;
    private final PlanText plans;

    /** Of an answer. */
    public BuyText(BuyAnswer answer) {
        this.answer = answer;
        this.plans = new PlanText(answer.shops().market().catalogue(), answer.shopper().people().stream()
                .map(Shopper::title).toList());
    }

    /** "For Nib, round 1 and Nib, round 2, by prices of 2031-03-01 (as asked)." */
    public String heading() {
        return "For " + answer.shopper().wants() + ", by prices of "
                + answer.shops().day() + " (" + answer.shops().why() + ")" + answer.budget().map(most -> ", with "
                        + Cash.text(most)).orElse("") + ".";
    }

    /** All of it, a line for each thing. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        lines.add("");
        answer.answer().plan().ifPresentOrElse(plan -> plan(plan, lead(plan), lines), () -> lines.addAll(none()));
        answer.left().forEach(left -> lines.add(left(left)));
        for (Plan other : answer.others()) {
            lines.add("");
            plan(other, "Next best: " + Cash.text(other.total()) + ", " + Cash.text(other.total().minus(
                    answer.answer().plan().orElseThrow().total())) + " more.", lines);
        }
        if (answer.answer().plan().isPresent()) {
            noOthers().ifPresent(lines::add);
            remarks().forEach(lines::add);
        }
        return lines;
    }

    /** Why fewer of the next best plans are told than were asked for; empty if they are all there. */
    public Optional<String> noOthers() {
        if (answer.others().size() >= answer.next() || answer.answer().plan().isEmpty()) {
            return Optional.empty();
        }
        if (!answer.answer().plan().get().proven() || answer.stopped()) {
            return Optional.of("Next best plans were not looked for to the end.");
        }
        return Optional.of((answer.others().isEmpty() ? "No other plan costs up to " : "No more plans cost up to ")
                + Cash.text(answer.margin()) + " more.");
    }

    private String lead(Plan plan) {
        return plan.purchases().isEmpty() ? nothing(plan) : "Buy for " + Cash.text(plan.total()) + ". " + PlanText.proof(plan);
    }

    private String nothing(Plan plan) {
        return plan.fielded().isEmpty() ? "Nothing of it can be had" + answer.budget().map(most -> " for " + Cash.text(most))
                .orElse("") + "." : "Nothing need be bought: everything for "
                + titles(plan.fielded()) + " is there.";
    }

    private void plan(Plan plan, String lead, List<String> lines) {
        lines.add(lead);
        lines.addAll(plans.orders(plan, 0));
        List<String> builds = plans.builds(plan, 0);
        if (!builds.isEmpty()) {
            lines.add(answer.shopper().others().isEmpty() ? "Build:" : "Build and share out:");
            builds.forEach(build -> lines.add("  " + build + "."));
        }
        if (!plan.purchases().isEmpty()) {
            lines.add("Left over: " + plans.leftovers(plan) + ".");
        }
        for (int i = 0; i < plan.fielded().size(); i++) {
            lines.add(plan.fielded().get(i).title() + ": " + plans.turnout(plan.turnouts().get(i)) + ".");
            plans.alone(plan, i).forEach(build -> lines.add("  " + build + "."));
        }
    }

    /** Why there is no plan. */
    public List<String> none() {
        List<String> lines = new ArrayList<>();
        if (!answer.answer().impossible()) {
            lines.add("Stopped before a plan was found" + answer.answer().bound().map(bound -> "; nothing costs less than "
                    + Cash.text(bound)).orElse("") + ".");
        } else {
            lines.add("There is no plan.");
        }
        answer.answer().findings().stream().filter(one -> !one.code().equals(Shops.NO_RATE)).map(Finding::message).distinct()
                .forEach(lines::add);
        answer.shops().leftOut().ifPresent(lines::add);
        lines.addAll(answer.shopper().remarks());
        return lines;
    }

    /** What cannot be had for the money. */
    public String left(Left left) {
        if (left.together().isEmpty()) {
            return left.target().title() + (!left.settled() ? ": was not reached in time."
                    : ": cannot be had, whatever it costs." + answer.why().getOrDefault(left.target().id(), List.of()).stream()
                            .filter(one -> !one.code().equals(Shops.NO_RATE)).map(Finding::message).distinct().map(" "::concat).collect(Collectors.joining()));
        }
        if (!left.settled()) {
            return left.target().title() + ": was not settled in time; the best that was found together with the others costs "
                    + Cash.text(left.together().get()) + ".";
        }
        String beside = answer.answer().plan().map(Plan::fielded).orElse(List.of()).isEmpty() ? "" : "together with the others ";
        return left.target().title() + ": is beyond the budget; " + beside + "it would cost "
                + Cash.text(left.together().get()) + ", " + Cash.text(left.together().get().minus(answer.budget().orElseThrow()))
                + " too much" + (left.equals(answer.left().get(0)) && !beside.isEmpty() ? answer.further().map(cost ->
                        "; on top of this it is " + Cash.text(cost)).orElse("") : "") + ".";
    }

    /** What was left out of account, and what was taken into it. */
    public List<String> remarks() {
        List<String> lines = new ArrayList<>();
        answer.shops().leftOut().ifPresent(lines::add);
        lines.addAll(answer.shopper().remarks());
        if (answer.stopped()) {
            lines.add("The search was ended before it was through.");
        }
        return lines;
    }

    /** The answer for a chat: what to buy, what that makes possible, what is missing for the rest, how to build it. */
    public String reply() {
        Optional<Plan> found = answer.answer().plan();
        Reply reply = new Reply();
        if (found.isEmpty()) {
            none().forEach(reply::say);
            return reply.toString();
        }
        Plan plan = found.get();
        String done = titles(plan.fielded());
        if (plan.purchases().isEmpty()) {
            reply.say(nothing(plan));
        } else {
            reply.say(plans.boxes(plan.purchases()) + ", " + Cash.text(plan.total()) + (plan.proven() ? "" : " (best found)")
                    + ": " + done + " done.");
        }
        answer.left().stream().limit(1).forEach(left -> reply.say(answer.further().map(cost ->
                left.target().title() + " wants another " + Amounts.text(cost) + ".").orElseGet(() -> left(left))));
        List<String> builds = plans.builds(plan, 0);
        reply.say(builds.isEmpty() ? "" : "Build " + String.join("; ", builds) + ".");
        reply.say(plan.purchases().isEmpty() ? "" : "Left over: " + plans.leftovers(plan) + ".");
        return reply.toString();
    }

    private static String titles(List<Target> targets) {
        return targets.size() <= REPLY_LISTS ? PlanText.and(targets.stream().map(Target::title).toList())
                : targets.size() + " lists";
    }
}
