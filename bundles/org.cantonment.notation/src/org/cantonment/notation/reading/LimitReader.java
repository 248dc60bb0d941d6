package org.cantonment.notation.reading;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Always;
import org.cantonment.domain.rules.Before;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Keep;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Provided;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.rules.Relation;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.domain.rules.Scope;
import org.cantonment.domain.rules.Taking;
import org.cantonment.model.book.Line;
import org.cantonment.model.ruleset.RulesetPackage;

/** Reads the lines of a limit. */
final class LimitReader {

    private final Reading reading;
    private final Phrases phrases;
    private final ExpressionReader expressions;

    LimitReader(Reading reading, Phrases phrases, ExpressionReader expressions) {
        this.reading = reading;
        this.phrases = phrases;
        this.expressions = expressions;
    }

    Optional<Fact> read(Line line, Id id) {
        if (line instanceof org.cantonment.model.ruleset.Bound bound) {
            return bound(bound, id);
        }
        if (line instanceof org.cantonment.model.ruleset.Taking taking) {
            return taking(taking, id);
        }
        if (line instanceof org.cantonment.model.ruleset.Keep keep) {
            return keep.getCount() == null ? Optional.empty()
                    : Optional.of(new Keep(id, keep.getCount(), phrases.when(keep.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Before before) {
            return Reading.ref(before.getFirst()).flatMap(first -> Reading.ref(before.getThen())
                    .map(then -> new Before(id, Reading.number(before.getFirstCount(), 1), first,
                            Reading.number(before.getThenCount(), 1), then, phrases.when(before.getWhen()))));
        }
        if (line instanceof org.cantonment.model.ruleset.Always always) {
            return expressions.yesOrNo(always, always.getExpression(), false)
                    .map(said -> new Always(id, said, phrases.when(always.getWhen())));
        }
        if (line instanceof org.cantonment.model.ruleset.Provided provided) {
            return expressions.yesOrNo(provided, provided.getCondition(), false)
                    .map(said -> new Provided(id, said, phrases.when(provided.getWhen())));
        }
        return Optional.empty();
    }

    private Optional<Fact> bound(org.cantonment.model.ruleset.Bound bound, Id id) {
        List<Id> of = Reading.refs(bound.getOf());
        if (of.isEmpty() || bound.getSpan() == null) {
            return Optional.empty();
        }
        if (!bound.getPer().isEmpty() && Reading.refs(bound.getPer()).isEmpty()) {
            return Optional.empty();
        }
        int perCount = reading.atLeastOne(bound, RulesetPackage.Literals.BOUND__PER_COUNT, bound.getPerCount());
        return scope(bound.getScope()).map(scope -> new Bound(id, measure(bound), phrases.span(bound.getSpan()), of,
                perCount, Reading.refs(bound.getPer()), rounding(bound.getRounding()), scope,
                phrases.when(bound.getWhen())));
    }

    private static Measure measure(org.cantonment.model.ruleset.Bound bound) {
        if (bound.isPercent()) {
            return bound.isLimit() ? Measure.PERCENT_OF_LIMIT : Measure.PERCENT_OF_USED;
        }
        return bound.isPoints() ? Measure.POINTS : Measure.COUNT;
    }

    static Rounding rounding(String word) {
        return Words.of(Rounding.class, word).orElse(Rounding.EXACT);
    }

    private Optional<Fact> taking(org.cantonment.model.ruleset.Taking taking, Id id) {
        List<Id> subjects = Reading.refs(taking.getSubjects());
        List<Id> objects = Reading.refs(taking.getObjects());
        if (subjects.isEmpty() || objects.isEmpty()) {
            return Optional.empty();
        }
        return Words.of(Relation.class, taking.getRelation()).flatMap(relation -> scope(taking.getScope())
                .map(scope -> new Taking(id, subjects, relation,
                        Optional.ofNullable(taking.getSpan()).map(phrases::span), objects, scope,
                        phrases.when(taking.getWhen()))));
    }

    /** Empty if the scope names a formation that nobody has: then the line cannot be judged. */
    private static Optional<Scope> scope(org.cantonment.model.ruleset.Scope scope) {
        if (scope == null) {
            return Optional.of(Scope.DEFAULT);
        }
        if (scope.isAnyFormation()) {
            return Optional.of(new Scope(Reckoning.EACH_FORMATION, Optional.empty()));
        }
        if (scope.getWhole() != null) {
            return Words.of(Reckoning.class, scope.getWhole()).map(whole -> new Scope(whole, Optional.empty()));
        }
        return Reading.ref(scope.getFormation()).map(id -> new Scope(Reckoning.EACH_OF, Optional.of(id)));
    }
}
