package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Purchase;
import org.cantonment.buying.worth.Worth;
import org.cantonment.buying.worth.Worth.ExtraWorth;
import org.cantonment.buying.worth.Worth.ToPlayer;
import org.cantonment.domain.common.Amounts;
import org.cantonment.domain.finding.Finding;
import org.joda.money.Money;

/** What a box is worth, in words: for a terminal, and short enough for a chat. */
public final class WorthText {
    private final WorthAnswer answer;
    private final Worth worth;
    private final PlanText plans;

    /** Of an answer. */
    public WorthText(WorthAnswer answer) {
        this.answer = answer;
        this.worth = answer.worth();
        this.plans = new PlanText(answer.shops().market().catalogue());
    }

    /** All of it, a line for each thing. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        if (worth.price().isPresent()) {
            lines.add("");
            lines.addAll(singly());
            extras().ifPresent(lines::add);
            worth.player().ifPresent(player -> {
                lines.add("");
                lines.addAll(toPlayer(player));
            });
        }
        remarks().forEach(lines::add);
        return lines;
    }

    /** "Muster bundle costs 60.00 EUR, by prices of 2031-03-01 (as asked)." */
    public String heading() {
        String day = "by prices of " + answer.shops().day() + " (" + answer.shops().why() + ")";
        return worth.price().map(price -> worth.title() + " costs " + Cash.text(price) + (price.equals(worth.bare().get()) ? ""
                : " (" + Amounts.text(worth.bare().get()) + " without postage and discounts)") + ", " + day + ".")
                .orElseGet(() -> NoPrice.of(worth.box(), answer.shops()));
    }

    /** What single boxes cost, and what the box saves against them. */
    public List<String> singly() {
        List<String> lines = new ArrayList<>();
        if (worth.singles().isEmpty()) {
            lines.add(answer.stopped() ? "The same pieces singly: nothing was found in time."
                    : "The same pieces singly: no single boxes on sale yield them.");
            return lines;
        }
        Plan singles = worth.singles().get();
        lines.add("The same pieces singly: " + Cash.text(singles.total()) + ". " + PlanText.proof(singles));
        lines.addAll(plans.orders(singles, 0));
        lines.add("  Left over: " + plans.leftovers(singles) + ".");
        lines.add("Against them it " + saving(singles, worth.price().orElseThrow(), worth.price().get()) + ".");
        return lines;
    }

    /** What in it is no piece; empty if nothing is. */
    public Optional<String> extras() {
        if (worth.extras().isEmpty()) {
            return Optional.empty();
        }
        String things = worth.extras().stream().map(this::extra).collect(Collectors.joining(", "));
        return Optional.of("Apart from the pieces: " + things + "." + worth.savingWithExtras().map(saving ->
                " Where that is wanted, too, it " + Cash.saving(saving) + ".").orElse(""));
    }

    private String extra(ExtraWorth extra) {
        return extra.count() + " " + answer.shops().market().catalogue().title(extra.extra()) + extra.value().map(value ->
                ", " + Cash.text(value) + (extra.sold() ? " singly" : " as its maker says")).orElse(", of no stated value");
    }

    /** What it saves a player, and what it costs to be made to buy it. */
    public List<String> toPlayer(ToPlayer player) {
        Shopper shopper = answer.shopper().orElseThrow();
        List<String> lines = new ArrayList<>();
        lines.add("To " + shopper.title() + ", for " + shopper.wants() + ":");
        lines.add("  Without it: " + player.without().map(this::plan).orElse(answer.stopped() ? "nothing was found in time"
                : "there is no way") + ".");
        lines.add("  With it on offer: " + plan(player.with()) + ".");
        lines.add("  " + saving(player));
        if (player.dearer().isPresent() && player.dearer().get().isPositive()) {
            lines.add("  Made to buy it: " + plan(player.made().orElseThrow()) + ", " + Cash.text(player.dearer().get())
                    + " dearer.");
        }
        answer.withExtras().ifPresent(one -> lines.add("  " + withExtras(one)));
        return lines;
    }

    /** "To Nib it saves 2.00 EUR.", or that it is the only way; a span where the search was ended too soon. */
    public String saving(ToPlayer player) {
        String to = "To " + answer.shopper().orElseThrow().title() + " it ";
        if (player.without().isEmpty()) {
            return to + (answer.stopped() ? "was not settled what it saves." : "is the only way.");
        }
        return to + saving(player.without().get(), player.with().bound(), player.with().total()) + ".";
    }

    /** What something saves that costs between this and that, against a plan that may be not the best. */
    private static String saving(Plan plan, Money least, Money most) {
        Money from = plan.bound().minus(most);
        Money to = plan.total().minus(least);
        return from.equals(to) ? Cash.saving(from) : "saves between " + Cash.text(from) + " and " + Cash.text(to)
                + ", which was not settled in time";
    }

    private String withExtras(ToPlayer one) {
        String things = PlanText.and(answer.extrasAsked().stream().map(extra -> extra.count() + " "
                + answer.shops().market().catalogue().title(extra.extra())).toList());
        Money price = worth.price().orElseThrow();
        String without = one.without().map(plan -> Cash.text(plan.total()) + " without it"
                + (plan.total().isLessThan(price) ? ", still less" : "")).orElse("only with it");
        String saving = one.saving().filter(Money::isPositive).map(more -> "; then it " + Cash.saving(more)).orElse("");
        return "If " + things + (answer.extrasAsked().size() == 1 ? " is" : " are") + " wanted, too: " + without + saving + ".";
    }

    /** "40.00 EUR: 1 Marsh platoon 18.00 and 1 Cars 22.00". */
    private String plan(Plan plan) {
        if (plan.purchases().isEmpty()) {
            return Cash.text(plan.total()) + ": everything is there";
        }
        return Cash.text(plan.total()) + ": " + PlanText.and(plan.purchases().stream().map(this::priced).toList())
                + (plan.proven() ? "" : " (the best that was found; nothing under " + Cash.text(plan.bound()) + ")");
    }

    private String priced(Purchase purchase) {
        return plans.boxes(purchase) + " " + Amounts.text(purchase.sum());
    }

    /** What stands in the way of a figure, or was taken into account. */
    public List<String> remarks() {
        List<String> lines = new ArrayList<>();
        worth.findings().stream().filter(one -> worth.price().isPresent() && !one.code().equals("worth.no-singles")
                && !answer.stopped()).map(Finding::message).forEach(lines::add);
        if (answer.stopped()) {
            lines.add("The search was ended before it was through.");
        }
        answer.shops().leftOut().filter(one -> worth.price().isPresent()).ifPresent(lines::add);
        answer.shopper().ifPresent(one -> lines.addAll(one.remarks()));
        return lines;
    }

    /** The answer for a chat. */
    public String reply() {
        if (worth.price().isEmpty()) {
            return heading();
        }
        Reply reply = new Reply().say(heading());
        reply.say(worth.singles().map(plan -> "Same pieces singly: " + Amounts.text(plan.total()) + ", so it "
                + saving(plan, worth.price().get(), worth.price().get()) + ".").orElseGet(() -> singly().get(0)));
        worth.player().ifPresent(player -> {
            reply.say(saving(player));
            player.without().ifPresent(plan -> reply.say("Without it the lists need "
                    + (plan.total().isLessThan(worth.price().get()) ? "only " : "") + Amounts.text(plan.total()) + " of boxes."));
            answer.withExtras().ifPresent(one -> reply.say(withExtras(one)));
        });
        remarks().forEach(reply::say);
        return reply.toString();
    }
}
