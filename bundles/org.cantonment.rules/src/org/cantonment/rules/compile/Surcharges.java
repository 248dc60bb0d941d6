package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Surcharge;
import org.cantonment.rules.view.Formula;
import org.cantonment.rules.view.Phrasing;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.SurchargeView;

/**
 * The prices that hang on what else is in the list, and in which order they can be worked out. A price may ask for the
 * list under its rule set, the round and the era, for those hold still while a list is priced; and for the points of
 * others only where those do not hang on it in turn.
 */
final class Surcharges {

    private record Key(boolean cheaper, boolean each, Optional<Expression> condition) {
    }

    private final BookOrder order;
    private final Picker picker;
    private final Names names;
    private final List<Finding> findings;
    private final Map<Id, List<SurchargeView>> byCard = new HashMap<>();
    private final List<List<SurchargeView>> byChoice = new ArrayList<>();
    private final List<Integer> turn = new ArrayList<>();

    Surcharges(Cards cards, BookOrder order, Picker picker, Names names, List<Finding> findings) {
        this.order = order;
        this.picker = picker;
        this.names = names;
        this.findings = findings;
        List<Card> all = new ArrayList<>(cards.units());
        all.addAll(cards.formations());
        for (Card card : all) {
            List<SurchargeView> lines = lines(card);
            byCard.put(card.id(), lines);
            byChoice.add(lines);
        }
        line();
    }

    /** What makes a unit or formation dearer or cheaper. */
    List<SurchargeView> of(Card card) {
        return List.copyOf(byCard.getOrDefault(card.id(), List.of()));
    }

    /** The numbers of those that have such lines, each after those whose points it asks for. */
    List<Integer> turn() {
        return turn;
    }

    private List<SurchargeView> lines(Card card) {
        List<Said<Surcharge>> said = card.holding(Surcharge.class);
        List<SurchargeView> lines = new ArrayList<>(said.size());
        if (said.isEmpty()) {
            return lines;
        }
        FormulaMaker formulas = new FormulaMaker(card, picker, names, findings);
        for (Said<Surcharge> each : picker.each(said, line -> new Key(line.cheaper(), line.each(), line.condition()))) {
            Surcharge line = each.fact();
            Optional<Formula> amount = formulas.of(line.amount(), line.id());
            Optional<Formula> condition = line.condition().flatMap(when -> formulas.of(when, line.id()));
            if (amount.isPresent() && condition.isPresent() == line.condition().isPresent()
                    && still(amount.get(), line) && (condition.isEmpty() || still(condition.get(), line))) {
                lines.add(new SurchargeView(line, order.title(each.book()), amount.get(), condition, words(line)));
            }
        }
        return lines;
    }

    private String words(Surcharge line) {
        Phrasing phrasing = new Phrasing(names::title);
        String by = line.amount() instanceof org.cantonment.domain.expression.NameUse name ? " by " + name.name() : "";
        return (line.cheaper() ? "cheaper" : "dearer") + by + (line.each() ? " each" : "")
                + line.condition().map(when -> " when " + phrasing.words(when)).orElse("");
    }

    /** Whether all that a price asks for holds still while the list is priced; if not, that is a finding. */
    private boolean still(Formula formula, Surcharge line) {
        Expression said = formula.said();
        boolean moves = said instanceof PiecesOf
                || said instanceof Given given && given.what() == Given.What.LIMIT
                || said instanceof Quantity quantity && (quantity.in() != Quantity.Stretch.HERE
                        || quantity.measure() == Quantity.Measure.KEPT || quantity.measure() == Quantity.Measure.GONE
                        || quantity.measure() == Quantity.Measure.ADDED)
                || formula.of() != null && formula.of().hasSupports();
        if (moves) {
            findings.add(new Finding("price.asks", Severity.BREACH, line.id(), Optional.empty(), "A price may hang on the "
                    + "units and formations of its own rule set in the list, on the round and on the era; '"
                    + new Phrasing(names::title).words(said) + "' is none of these. The line is left out.",
                    List.of(Mend.advice("Ask for something that stands before the list is priced."))));
            return false;
        }
        return formula.parts().stream().allMatch(part -> still(part, line));
    }

    /** Who has no line that waits for another comes first; what then waits for itself is cut. */
    private void line() {
        BitSet waiting = new BitSet();
        for (int choice = 0; choice < byChoice.size(); choice++) {
            waiting.set(choice, !byChoice.get(choice).isEmpty());
        }
        if (waiting.isEmpty()) {
            return;
        }
        settle(waiting);
        BitSet circle = core(waiting);
        for (int choice = circle.nextSetBit(0); choice >= 0; choice = circle.nextSetBit(choice + 1)) {
            cut(choice, circle);
        }
        settle(waiting);
    }

    private void settle(BitSet waiting) {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int choice = waiting.nextSetBit(0); choice >= 0; choice = waiting.nextSetBit(choice + 1)) {
                if (!asks(choice).intersects(waiting)) {
                    turn.add(choice);
                    waiting.clear(choice);
                    moved = true;
                }
            }
        }
    }

    /** Those who wait and are waited for. */
    private BitSet core(BitSet waiting) {
        BitSet core = (BitSet) waiting.clone();
        BitSet before = null;
        while (!core.equals(before)) {
            before = (BitSet) core.clone();
            BitSet asked = new BitSet();
            for (int choice = core.nextSetBit(0); choice >= 0; choice = core.nextSetBit(choice + 1)) {
                asked.or(asks(choice));
            }
            core.and(asked);
        }
        return core;
    }

    private void cut(int choice, BitSet circle) {
        for (SurchargeView line : List.copyOf(byChoice.get(choice))) {
            if (asks(line, choice).intersects(circle)) {
                byChoice.get(choice).remove(line);
                findings.add(new Finding("price.circle", Severity.BREACH, line.id(), Optional.empty(),
                        "This price asks for points that hang on this price. The line is left out.",
                        List.of(Mend.advice("Ask for a count or a strength, or for the points of others."))));
            }
        }
    }

    private BitSet asks(int choice) {
        BitSet asked = new BitSet();
        byChoice.get(choice).forEach(line -> asked.or(asks(line, choice)));
        return asked;
    }

    private BitSet asks(SurchargeView line, int choice) {
        BitSet asked = new BitSet();
        BitSet own = new BitSet();
        own.set(choice);
        asks(line.amount(), own, asked);
        line.condition().ifPresent(when -> asks(when, own, asked));
        return asked;
    }

    /** Whose points a formula asks for; who asks a formation's asks for everybody's. */
    private void asks(Formula formula, BitSet own, BitSet asked) {
        Expression said = formula.said();
        if (said instanceof Given given && given.what() == Given.What.POINTS_USED) {
            asked.set(0, byChoice.size());
        } else if (said instanceof Quantity quantity && quantity.measure() == Quantity.Measure.POINTS) {
            asked.or(meant(formula.of()));
        } else if (said instanceof Own it && it.what() == Own.What.POINTS) {
            asked.or(own);
        }
        BitSet inner = said instanceof Gathering ? meant(formula.of()) : own;
        formula.parts().forEach(part -> asks(part, inner, asked));
    }

    private BitSet meant(Selector of) {
        BitSet meant = new BitSet();
        for (int choice = of.nextChoice(0); choice >= 0; choice = of.nextChoice(choice + 1)) {
            meant.set(choice);
        }
        if (of.hasFormations()) {
            meant.set(0, byChoice.size());
        }
        return meant;
    }
}
