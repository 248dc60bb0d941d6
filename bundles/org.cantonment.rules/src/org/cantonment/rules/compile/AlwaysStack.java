package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Logic;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Always;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Let;
import org.cantonment.domain.rules.Provided;
import org.cantonment.rules.view.AlwaysView;
import org.cantonment.rules.view.Formula;
import org.cantonment.rules.view.ProvidedView;

/**
 * The lines with 'always' and 'when' of one limit as the layers leave them. A stricter line takes the place of a lower one
 * of its key; a looser one only under 'loosen'; of two of which nobody can tell, both stand. One more condition relaxes.
 */
final class AlwaysStack {

    /** A line that stands, and the one it relaxed. */
    private record Standing(Said<Always> said, Standing relaxed) {
    }

    private final BookOrder order;
    private final Picker picker;
    private final List<Finding> findings;

    AlwaysStack(BookOrder order, Picker picker, List<Finding> findings) {
        this.order = order;
        this.picker = picker;
        this.findings = findings;
    }

    /** @param unchanged as names would be that a layer changes without a word of loosening */
    List<AlwaysView> always(Card card, FormulaMaker formulas, Optional<FormulaMaker> unchanged) {
        List<Standing> standing = new ArrayList<>();
        List<Said<Always>> changes = new ArrayList<>();
        List<Said<Always>> own = new ArrayList<>();
        card.holding(Always.class).forEach(said -> (said.own() ? own : changes).add(said));
        picker.each(own, AlwaysKey::of).forEach(said -> standing.add(new Standing(said, null)));
        for (Said<Always> said : picker.inTurn(closest(changes))) {
            lay(said, standing);
        }
        List<AlwaysView> views = new ArrayList<>();
        for (Standing each : standing) {
            Optional<AlwaysView> view = view(each, formulas);
            view.ifPresent(views::add);
            if (view.isPresent() && unchanged.isPresent()) {
                beside(each.said(), formulas, unchanged.get()).ifPresent(views::add);
            }
        }
        return views;
    }

    /** The line as its names were before a layer changed them that does not say that it loosens. */
    private Optional<AlwaysView> beside(Said<Always> said, FormulaMaker formulas, FormulaMaker unchanged) {
        Optional<Said<Let>> changed = above(said, formulas.changed(said.fact().expression(), unchanged));
        return changed.flatMap(let -> unchanged.of(said.fact().expression(), said.fact().id())
                .map(formula -> new AlwaysView(said.fact(), order.title(said.book()) + ", with " + let.fact().name()
                        + " as it was before " + order.title(let.book()) + ", which does not say that it loosens", formula,
                        Optional.empty())));
    }

    private static Optional<Said<Let>> above(Said<?> said, List<Said<Let>> lets) {
        return lets.stream().filter(let -> let.book() > said.book()).findFirst();
    }

    private static List<Said<Always>> closest(List<Said<Always>> changes) {
        return changes.stream().filter(said -> changes.stream().noneMatch(other -> other.book() == said.book()
                && other.closeness() > said.closeness()
                && AlwaysKey.of(other.fact()).equals(AlwaysKey.of(said.fact())))).toList();
    }

    private void lay(Said<Always> said, List<Standing> standing) {
        boolean loosens = said.direction() == Direction.LOOSEN;
        Standing relaxed = null;
        boolean met = false;
        List<Standing> gone = new ArrayList<>();
        for (Standing lower : standing) {
            if (!AlwaysKey.of(lower.said().fact()).equals(AlwaysKey.of(said.fact()))) {
                continue;
            }
            met = true;
            Id rule = lower.said().fact().id();
            Strictness strictness = AlwaysKey.strictness(lower.said().fact(), said.fact());
            if (Picker.wrongWay(said.direction(), strictness)) {
                findings.add(picker.direction(said, rule, lower.said().book()));
                if (strictness == Strictness.LOOSER) {
                    return;
                }
                gone.add(lower);
            } else if (loosens) {
                gone.add(lower);
                relaxed = lower;
            } else if (strictness == Strictness.LOOSER) {
                findings.add(order.over(said.book(), lower.said().book())
                        ? picker.unsaid(said.fact().id(), said.book(), rule, lower.said().book())
                        : picker.collision(said.fact().id(), said.book(), rule, lower.said().book()));
                return;
            } else if (strictness != Strictness.OTHER) {
                gone.add(lower);
            }
        }
        if (loosens && !met) {
            findings.add(nothing(said));
            return;
        }
        standing.removeAll(gone);
        standing.add(new Standing(said, relaxed));
    }

    private Finding nothing(Said<Always> said) {
        return new Finding("layer.loosens-nothing", Severity.CAUTION, said.fact().id(), Optional.empty(),
                order.title(said.book()) + " loosens a line here that nobody below it says; it is left out.",
                List.of(Mend.advice("Begin the line as the one that it loosens, up to the words that compare.")));
    }

    private Optional<AlwaysView> view(Standing standing, FormulaMaker formulas) {
        Always always = standing.said().fact();
        Optional<AlwaysView> relaxed = standing.relaxed() == null ? Optional.empty()
                : view(standing.relaxed(), formulas);
        return formulas.of(always.expression(), always.id()).map(formula -> new AlwaysView(always,
                order.title(standing.said().book()), formula, relaxed));
    }

    /** The conditions of a card; a layer's stands only if it says that it loosens. */
    List<ProvidedView> provided(Card card, FormulaMaker formulas, Optional<FormulaMaker> unchanged) {
        List<ProvidedView> views = new ArrayList<>();
        for (Said<Provided> said : card.holding(Provided.class)) {
            Provided line = said.fact();
            if (!said.own() && said.direction() == Direction.TIGHTEN) {
                findings.add(picker.direction(said, card.id(), card.book()));
            } else if (!said.own() && said.direction() == Direction.CHANGE) {
                findings.add(picker.unsaid(line.id(), said.book(), card.id(), card.book()));
            } else {
                formulas.of(line.condition(), line.id()).ifPresent(formula -> views.add(new ProvidedView(line,
                        order.title(said.book()), either(said, formula, formulas, unchanged))));
            }
        }
        return List.copyOf(views);
    }

    /** A condition as it stands, or as its names were before a layer changed them that does not say that it loosens. */
    private static Formula either(Said<Provided> said, Formula formula, FormulaMaker formulas,
            Optional<FormulaMaker> unchanged) {
        Expression condition = said.fact().condition();
        return unchanged.filter(maker -> above(said, formulas.changed(condition, maker)).isPresent())
                .flatMap(maker -> maker.of(condition, said.fact().id()))
                .map(before -> Formula.of(new Logic(false, List.of(condition, condition)), List.of(formula, before), null))
                .orElse(formula);
    }
}
