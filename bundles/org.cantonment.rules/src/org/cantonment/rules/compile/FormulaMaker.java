package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Gathering;
import org.cantonment.domain.expression.NameUse;
import org.cantonment.domain.expression.OptionsTaken;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Selection;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Let;
import org.cantonment.rules.view.Formula;
import org.cantonment.rules.view.Selector;

/**
 * Looks up the expressions of one card: who is meant, and what its names stand for at this time. A line that leans on a
 * name that stands for nothing now is left out, with a finding at that line.
 */
final class FormulaMaker {

    private static final int MOST_DEPTH = 800;
    private static final int MOST_NAMES = 30;

    private final Names names;
    private final List<Finding> findings;
    private final Map<String, Said<Let>> lets = new HashMap<>();
    private final Map<String, Optional<Formula>> made = new HashMap<>();
    private final Set<String> open = new LinkedHashSet<>();

    FormulaMaker(Card card, Picker picker, Names names, List<Finding> findings) {
        this(names, findings, picker.each(card.holding(Let.class), Let::name));
    }

    private FormulaMaker(Names names, List<Finding> findings, List<Said<Let>> lets) {
        this.names = names;
        this.findings = findings;
        lets.forEach(said -> this.lets.put(said.fact().name(), said));
    }

    /**
     * The same as it would be without the names that a layer gives another meaning and does not say that it loosens: nobody
     * can tell whether such a change loosens, so what stood before must hold beside it. Empty if there is no such name.
     */
    static Optional<FormulaMaker> unchanged(Card card, Picker picker, Names names) {
        List<Said<Let>> all = card.holding(Let.class);
        List<Said<Let>> kept = all.stream().filter(said -> said.own() || said.direction() == Direction.LOOSEN).toList();
        boolean changed = all.stream().anyMatch(said -> !kept.contains(said)
                && kept.stream().anyMatch(other -> other.fact().name().equals(said.fact().name())));
        // What is wrong with these lines is said of them as they stand.
        return changed ? Optional.of(new FormulaMaker(names, new ArrayList<>(), picker.each(kept, Let::name)))
                : Optional.empty();
    }

    /** The layers that change what a formula leans on beside what it meant in another. */
    List<Said<Let>> changed(Expression said, FormulaMaker unchanged) {
        List<Said<Let>> changed = new ArrayList<>();
        gather(said, unchanged, changed, new HashSet<>());
        return changed;
    }

    private void gather(Expression said, FormulaMaker unchanged, List<Said<Let>> changed, Set<String> seen) {
        if (said instanceof NameUse use && lets.containsKey(use.name()) && seen.add(use.name())) {
            Said<Let> let = lets.get(use.name());
            if (unchanged.lets.containsKey(use.name()) && unchanged.lets.get(use.name()) != let) {
                changed.add(let);
            }
            gather(let.fact().expression(), unchanged, changed, seen);
        }
        said.parts().forEach(part -> gather(part, unchanged, changed, seen));
    }

    /** The formula of what a line says; empty, with a finding at the line, if it cannot be worked out at this time. */
    Optional<Formula> of(Expression said, Id line) {
        try {
            return Optional.of(make(said, line));
        } catch (Unmade unmade) {
            return Optional.empty();
        }
    }

    /** Thrown and caught within this class alone, once the finding is made. */
    private static final class Unmade extends Exception {
        private static final long serialVersionUID = 1L;

        Unmade() {
            super("", null, false, false);
        }
    }

    private Formula make(Expression said, Id line) throws Unmade {
        if (said instanceof NameUse use) {
            Formula stands = named(use, line);
            return Formula.of(said, List.of(stands), null);
        }
        List<Formula> parts = new ArrayList<>(said.parts().size());
        for (Expression part : said.parts()) {
            parts.add(make(part, line));
        }
        Formula formula = Formula.of(said, parts, selector(said));
        if (formula.depth() > MOST_DEPTH) {
            throw unmade("expression.deep", line, Optional.empty(), "This line and the names that it leans on go too deep.",
                    "Say it in fewer steps.");
        }
        return formula;
    }

    private Selector selector(Expression said) {
        Selection of = said instanceof Quantity quantity ? quantity.of()
                : said instanceof Gathering gathering ? gathering.over()
                        : said instanceof OptionsTaken options ? options.of() : null;
        return of == null ? null : switch (of.breadth()) {
            case UNITS -> names.units();
            case FORMATIONS -> names.formations();
            case NAMED -> names.selector(of.of());
        };
    }

    private Formula named(NameUse use, Id line) throws Unmade {
        Said<Let> let = lets.get(use.name());
        if (let == null) {
            throw unmade("let.not-now", line, Optional.empty(), use.name()
                    + " stands for nothing at this time; the line is left out.",
                    "Say when this line holds, or what " + use.name() + " stands for then.");
        }
        Id rule = let.fact().id();
        if (let.fact().expression().type() != use.type()) {
            throw unmade("expression.type", line, Optional.of(rule), use.name() + " is " + use.type().words()
                    + " for this line, but " + let.fact().expression().type().words() + " as it is said for this time.",
                    "Give the name to the same sort of thing at all times.");
        }
        Optional<Formula> known = made.get(use.name());
        if (known != null) {
            return known.orElseThrow(Unmade::new);
        }
        if (open.size() >= MOST_NAMES) {
            throw unmade("expression.deep", line, Optional.of(rule), "More than " + MOST_NAMES
                    + " names lean on one another at this time.", "Say it in fewer steps.");
        }
        if (!open.add(use.name())) {
            throw unmade("name.circle", line, Optional.of(rule), use.name() + " is worked out of itself.",
                    "Say one of the names without the other.");
        }
        Optional<Formula> formula = of(let.fact().expression(), rule);
        open.remove(use.name());
        made.put(use.name(), formula);
        return formula.orElseThrow(Unmade::new);
    }

    private Unmade unmade(String code, Id line, Optional<Id> rule, String message, String mend) {
        findings.add(new Finding(code, Severity.BREACH, line, rule, message, List.of(Mend.advice(mend))));
        return new Unmade();
    }
}
