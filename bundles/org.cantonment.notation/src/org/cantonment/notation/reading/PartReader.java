package org.cantonment.notation.reading;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.expression.EraIs;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Given;
import org.cantonment.domain.expression.OptionsTaken;
import org.cantonment.domain.expression.Own;
import org.cantonment.domain.expression.PiecesOf;
import org.cantonment.domain.expression.Quantity;
import org.cantonment.domain.expression.Quantity.Measure;
import org.cantonment.domain.expression.Quantity.Stretch;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.expression.Selection;
import org.cantonment.domain.expression.YesNo;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.ruleset.OptionsOn;
import org.cantonment.model.ruleset.Part;
import org.cantonment.model.ruleset.RulesetPackage;
import org.cantonment.model.ruleset.YesOrNo;
import org.cantonment.notation.form.Codes;
import org.eclipse.emf.ecore.EObject;

/** Reads one part of an expression that is asked of the list, the shelf or the round. */
final class PartReader {

    private static final int MOST_DIGITS = 15;

    private final Reading reading;

    PartReader(Reading reading) {
        this.reading = reading;
    }

    /** Null for what means nothing; a name that nobody has is a finding of its own. */
    Expression read(Part part) {
        if (part instanceof org.cantonment.model.ruleset.Figure figure) {
            return figure(figure);
        }
        if (part instanceof YesOrNo answer) {
            return new YesNo(answer.isYes());
        }
        if (part instanceof org.cantonment.model.ruleset.Quantity quantity) {
            return quantity(quantity);
        }
        if (part instanceof org.cantonment.model.ruleset.Given given) {
            return "points".equals(given.getWhat()) ? new Given(Given.What.POINTS_USED)
                    : Words.of(Given.What.class, given.getWhat()).map(Given::new).orElse(null);
        }
        if (part instanceof org.cantonment.model.ruleset.EraIs era) {
            List<Id> eras = Reading.refs(era.getEras());
            return eras.isEmpty() ? null : new EraIs(eras);
        }
        if (part instanceof org.cantonment.model.ruleset.Own own) {
            return Words.of(Own.What.class, own.getWhat()).map(Own::new).orElse(null);
        }
        if (part instanceof OptionsOn options) {
            return options(options);
        }
        if (part instanceof org.cantonment.model.ruleset.PiecesOf pieces) {
            List<Id> what = Reading.refs(pieces.getWhat());
            return what.isEmpty() ? null : new PiecesOf(what,
                    Words.of(PiecesOf.State.class, pieces.getState()).orElse(PiecesOf.State.NEEDED));
        }
        return null;
    }

    private Expression figure(org.cantonment.model.ruleset.Figure figure) {
        String text = figure.getNumber();
        if (text == null) {
            return null;
        }
        boolean digits = text.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.');
        int point = text.indexOf('.');
        if (!digits || text.length() > MOST_DIGITS) {
            reading.problem(figure, RulesetPackage.Literals.FIGURE__NUMBER, Severity.BREACH, Codes.NUMBER_RANGE,
                    text.startsWith("-") ? "A number here is at least 0; write 'minus' before what is taken off."
                            : "This number is beyond all measure.");
            return null;
        }
        int decimals = point < 0 ? 0 : text.length() - point - 1;
        Ratio whole = Ratio.of(new BigInteger(text.replace(".", "")).longValueExact());
        return new Figure(whole.dividedBy(Ratio.of(BigInteger.TEN.pow(decimals).longValueExact())));
    }

    private Expression quantity(org.cantonment.model.ruleset.Quantity quantity) {
        Selection of = selection(quantity.getAll(), quantity.getOf());
        Optional<Measure> measure = quantity.isDifferent() && "count".equals(quantity.getMeasure())
                ? Optional.of(Measure.DIFFERENT) : Words.of(Measure.class, quantity.getMeasure());
        if (of == null || measure.isEmpty()) {
            return null;
        }
        if (quantity.isDifferent() && measure.get() != Measure.DIFFERENT) {
            return misplaced(quantity, "'different' stands only behind 'count of'.");
        }
        if (quantity.getState() != null) {
            return held(quantity, measure.get(), of);
        }
        if (quantity.isBefore()) {
            return "list".equals(quantity.getWhere()) ? new Quantity(measure.get(), of, Stretch.LIST_BEFORE)
                    : misplaced(quantity, "Only 'the list before' is known, no " + quantity.getWhere() + " before.");
        }
        if ("campaign".equals(quantity.getWhere()) && measure.get() != Measure.COUNT) {
            return misplaced(quantity, "Of the campaign only 'count of' is known: how often each was taken so far.");
        }
        return new Quantity(measure.get(), of, Words.of(Stretch.class, quantity.getWhere()).orElse(Stretch.HERE));
    }

    /** What is held against the list before. */
    private Expression held(org.cantonment.model.ruleset.Quantity quantity, Measure measure, Selection of) {
        if (measure != Measure.COUNT || quantity.getWhere() != null) {
            return misplaced(quantity, "'" + quantity.getState()
                    + "' is said of a plain count over the whole list, as in 'count of units " + quantity.getState() + "'.");
        }
        if (of.breadth() == Selection.Breadth.FORMATIONS) {
            return misplaced(quantity, "Only units are held against the list before.");
        }
        return Words.of(Measure.class, quantity.getState()).map(held -> new Quantity(held, of, Stretch.HERE)).orElse(null);
    }

    private Expression options(OptionsOn options) {
        Selection of = selection(options.getAll(), options.getOf());
        if (of == null) {
            return null;
        }
        if (options.getOption() == null) {
            return new OptionsTaken(Optional.empty(), of);
        }
        if (options.getOf().size() != 1) {
            return misplaced(options, "An option belongs to one unit: 'option "
                    + Reading.text(options.getOption().getName()) + " on' and that unit.");
        }
        return options.getOption().eIsProxy() || options.getOption().getName() == null ? null
                : new OptionsTaken(Optional.of(options.getOption().getName()), of);
    }

    /** Null if nobody is meant. */
    Selection selection(String all, List<? extends EObject> named) {
        if (all != null) {
            return all.startsWith("unit") ? Selection.units() : Selection.formations();
        }
        List<Id> of = Reading.refs(named);
        return of.isEmpty() || of.size() < named.size() ? null : new Selection(Selection.Breadth.NAMED, of);
    }

    private Expression misplaced(Part part, String message) {
        reading.problem(part, null, Severity.BREACH, Codes.EXPRESSION_PLACE, message);
        return null;
    }
}
