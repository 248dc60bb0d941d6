package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.expression.Expression;
import org.cantonment.domain.expression.Figure;
import org.cantonment.domain.expression.Ratio;
import org.cantonment.domain.rules.Availability;
import org.cantonment.domain.rules.Billet;
import org.cantonment.domain.rules.Called;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Costs;
import org.cantonment.domain.rules.Dearer;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Let;
import org.cantonment.domain.rules.Membership;
import org.cantonment.domain.rules.MendText;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Places;
import org.cantonment.domain.rules.Says;
import org.cantonment.domain.rules.SideOf;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Successor;
import org.cantonment.domain.rules.Surcharge;
import org.cantonment.domain.rules.Without;
import org.cantonment.model.book.Line;
import org.cantonment.model.ruleset.RulesetPackage;
import org.cantonment.notation.form.Codes;

/** Reads the dotted lines of a rule set. A line that lacks what it is about means nothing; its finding is of form. */
final class FactReader {

    private final Reading reading;
    private final Phrases phrases;
    private final OptionReader options;
    private final LimitReader limits;
    private final LikenessReader likenesses;
    private final ExpressionReader expressions;

    FactReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
        this.options = new OptionReader(reading, phrases, this);
        this.expressions = new ExpressionReader(reading);
        this.limits = new LimitReader(reading, phrases, expressions);
        this.likenesses = new LikenessReader(reading, phrases);
    }

    Optional<Fact> read(Line line, Id id) {
        Optional<Fact> fact = ofUnit(line, id);
        if (fact.isEmpty()) {
            fact = ofFormation(line, id);
        }
        if (fact.isEmpty()) {
            fact = worked(line, id);
        }
        if (fact.isEmpty()) {
            fact = limits.read(line, id);
        }
        return fact.isPresent() ? fact : likenesses.fact(line, id);
    }

    private Optional<Fact> ofUnit(Line line, Id id) {
        if (line instanceof org.cantonment.model.ruleset.Is is) {
            return some(new Membership(id, Reading.refs(is.getKinds()), phrases.when(is.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.SideOf of) {
            return some(new SideOf(id, Reading.refs(of.getSides()), phrases.when(of.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Available available) {
            return some(new Availability(id, phrases.when(available.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Strength strength) {
            return strength(strength, id);
        }
        if (line instanceof org.cantonment.model.ruleset.Needs needs) {
            return some(new Needs(id, needs.isEach(), needs(needs.getNeeds()), phrases.when(needs.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Option option) {
            return options.read(option, id);
        }
        if (line instanceof org.cantonment.model.ruleset.Dearer dearer) {
            return some(new Dearer(id, Reading.number(dearer.getPoints(), 0), Reading.number(dearer.getCount(), 0),
                    phrases.when(dearer.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Becomes becomes) {
            return Reading.ref(becomes.getUnit()).map(unit -> new Successor(id, unit, becomes.isDifference(),
                    phrases.when(becomes.getWhen())));
        }
        return Optional.empty();
    }

    /** What any card may say with an expression: names for things, and prices. */
    private Optional<Fact> worked(Line line, Id id) {
        if (line instanceof org.cantonment.model.ruleset.Let let && let.getName() != null) {
            return expressions.named(let).map(said -> new Let(id, let.getName(), said, phrases.when(let.getWhen())));
        }
        return line instanceof org.cantonment.model.ruleset.Surcharge surcharge ? surcharge(surcharge, id)
                : Optional.empty();
    }

    private Optional<Fact> surcharge(org.cantonment.model.ruleset.Surcharge line, Id id) {
        Optional<Expression> amount = line.getPoints() != null ? Optional.of(new Figure(Ratio.of(line.getPoints())))
                : expressions.number(line, line.getLet());
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        boolean cheaper = "cheaper".equals(line.getAct());
        Validity when = phrases.when(line.getWhen());
        if (line.getCondition() == null) {
            return some(new Surcharge(id, cheaper, amount.get(), line.isEach(), Optional.empty(), when));
        }
        return expressions.yesOrNo(line, line.getCondition(), true)
                .map(said -> new Surcharge(id, cheaper, amount.get(), line.isEach(), Optional.of(said), when));
    }

    private Optional<Fact> strength(org.cantonment.model.ruleset.Strength strength, Id id) {
        Optional<Cost> cost = cost(strength.getCost());
        if (strength.getFrom() == null || cost.isEmpty()) {
            return Optional.empty();
        }
        int from = reading.atLeastOne(strength, RulesetPackage.Literals.STRENGTH__FROM, strength.getFrom());
        int to = strength.getTo() == null ? from : strength.getTo();
        if (to < from) {
            reading.problem(strength, RulesetPackage.Literals.STRENGTH__TO,
                    org.cantonment.domain.finding.Severity.BREACH, Codes.NUMBER_RANGE,
                    "From " + from + " to " + to + " there is no strength.");
            to = from;
        }
        Validity when = phrases.when(strength.getWhen());
        return some(new Strength(id, from, to, cost.get(), needs(strength.getNeeds()), when));
    }

    private Optional<Fact> ofFormation(Line line, Id id) {
        if (line instanceof org.cantonment.model.ruleset.Billet billet) {
            List<Places> places = places(billet.getPlaces());
            if (billet.getName() == null || places.isEmpty()) {
                return Optional.empty();
            }
            return some(new Billet(id, billet.getName(), Reading.label(billet), places,
                    phrases.when(billet.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Costs costs) {
            return some(new Costs(id, Reading.number(costs.getPoints(), 0), phrases.when(costs.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Called called) {
            return some(new Called(id, Reading.text(called.getText()), phrases.when(called.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Without without) {
            return some(new Without(id, Reading.written(without.getNames()),
                    Reading.written(without.getStrengths()), phrases.when(without.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Says says) {
            return some(new Says(id, Reading.text(says.getText()), Validity.ALWAYS));
        }
        return line instanceof org.cantonment.model.ruleset.MendText mend
                ? some(new MendText(id, Reading.text(mend.getText()), Validity.ALWAYS)) : Optional.empty();
    }

    /** Only what names a unit, a kind or a formation that is known makes a place. */
    List<Places> places(List<org.cantonment.model.ruleset.Places> written) {
        List<Places> places = new ArrayList<>(written.size());
        for (org.cantonment.model.ruleset.Places each : written) {
            List<Id> of = Reading.refs(each.getOf());
            if (!of.isEmpty()) {
                places.add(new Places(phrases.span(each.getSpan()), of));
            }
        }
        return places;
    }

    List<Need> needs(List<org.cantonment.model.ruleset.Need> written) {
        List<Need> needs = new ArrayList<>(written.size());
        written.forEach(each -> need(each).ifPresent(needs::add));
        return needs;
    }

    Optional<Need> need(org.cantonment.model.ruleset.Need need) {
        if (need == null) {
            return Optional.empty();
        }
        List<Id> anyOf = Reading.refs(need.getWhat());
        return anyOf.isEmpty() ? Optional.empty() : Optional.of(new Need(
                reading.atLeastOne(need, RulesetPackage.Literals.NEED__COUNT, need.getCount()), anyOf));
    }

    Optional<Cost> cost(org.cantonment.model.book.Cost cost) {
        return cost == null || cost.getPoints() == null ? Optional.empty()
                : Optional.of(new Cost(cost.getPoints(), cost.isEach()));
    }

    private static Optional<Fact> some(Fact fact) {
        return Optional.of(fact);
    }
}
