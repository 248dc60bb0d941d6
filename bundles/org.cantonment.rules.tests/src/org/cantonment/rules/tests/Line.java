package org.cantonment.rules.tests;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InEras;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.OfEra;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.When;
import org.cantonment.domain.rules.Availability;
import org.cantonment.domain.rules.Before;
import org.cantonment.domain.rules.Billet;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Called;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Costs;
import org.cantonment.domain.rules.Dearer;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Keep;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Membership;
import org.cantonment.domain.rules.MendText;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Option;
import org.cantonment.domain.rules.Places;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.rules.Relation;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.domain.rules.Says;
import org.cantonment.domain.rules.Scope;
import org.cantonment.domain.rules.SideOf;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Successor;
import org.cantonment.domain.rules.Swap;
import org.cantonment.domain.rules.Taking;
import org.cantonment.domain.rules.Without;

/** A line of a test's rule book: what it says, and when; names are looked up and places given when it is put in. */
final class Line {

    /** Makes the record once place, names and time are known. */
    interface Maker {
        Fact make(Id id, Function<String, Id> names, Validity when);
    }

    private final Maker maker;
    private final List<Function<Function<String, Id>, When>> whens = new ArrayList<>();

    Line(Maker maker) {
        this.maker = maker;
    }

    Fact at(Id id, Function<String, Id> names) {
        List<When> conditions = new ArrayList<>();
        whens.forEach(when -> conditions.add(when.apply(names)));
        return maker.make(id, names, new Validity(conditions));
    }

    Line from(String era) {
        whens.add(names -> new Reach(Optional.of(new OfEra(names.apply(era))), Optional.empty()));
        return this;
    }

    Line to(String era) {
        whens.add(names -> new Reach(Optional.empty(), Optional.of(new OfEra(names.apply(era)))));
        return this;
    }

    Line in(String... eras) {
        whens.add(names -> new InEras(ids(names, eras)));
        return this;
    }

    Line rounds(int first, int last) {
        whens.add(names -> new InRounds(first, last));
        return this;
    }

    static List<Id> ids(Function<String, Id> names, String... some) {
        List<Id> ids = new ArrayList<>();
        for (String name : some) {
            ids.add(names.apply(name));
        }
        return ids;
    }

    static Line is(String... kinds) {
        return new Line((id, names, when) -> new Membership(id, ids(names, kinds), when));
    }

    static Line side(String... sides) {
        return new Line((id, names, when) -> new SideOf(id, ids(names, sides), when));
    }

    static Line available() {
        return new Line((id, names, when) -> new Availability(id, when));
    }

    static Line strength(int strength, int points) {
        return new Line((id, names, when) -> new Strength(id, strength, strength, new Cost(points, false), List.of(),
                when));
    }

    static Line strengths(int from, int to, int each) {
        return new Line((id, names, when) -> new Strength(id, from, to, new Cost(each, true), List.of(), when));
    }

    static Line costs(int points) {
        return new Line((id, names, when) -> new Costs(id, points, when));
    }

    static Line needs(boolean each, int count, String... anyOf) {
        return new Line((id, names, when) -> new Needs(id, each, List.of(new Need(count, ids(names, anyOf))), when));
    }

    static Line option(String option, int points) {
        return new Line((id, names, when) -> new Option(id, option, "", OptionalInt.empty(),
                Optional.of(new Cost(points, false)), List.of(), List.of(), List.of(), List.of(), List.of(), when));
    }

    static Line option(String option, int max, int pointsEach, String out, String in) {
        return new Line((id, names, when) -> new Option(id, option, "", OptionalInt.of(max),
                Optional.of(new Cost(pointsEach, true)), List.of(),
                List.of(new Swap(new Need(1, List.of(names.apply(out))), new Need(1, List.of(names.apply(in))))),
                List.of(), List.of(), List.of(), when));
    }

    static Line option(String option, List<String> needed, List<String> groups) {
        return new Line((id, names, when) -> new Option(id, option, "", OptionalInt.empty(), Optional.empty(), List.of(),
                List.of(), List.of(), needed, groups, when));
    }

    static Line dearer(int points, int beyond) {
        return new Line((id, names, when) -> new Dearer(id, points, beyond, when));
    }

    static Line becomes(String unit) {
        return new Line((id, names, when) -> new Successor(id, names.apply(unit), false, when));
    }

    static Line becomesByDifference(String unit) {
        return new Line((id, names, when) -> new Successor(id, names.apply(unit), true, when));
    }

    static Line called(String text) {
        return new Line((id, names, when) -> new Called(id, text, when));
    }

    static Line without(String... gone) {
        return new Line((id, names, when) -> new Without(id, List.of(gone), List.of(), when));
    }

    static Line withoutStrength(int strength) {
        return new Line((id, names, when) -> new Without(id, List.of(), List.of(strength), when));
    }

    static Line billet(String billet, Span span, String... of) {
        return new Line((id, names, when) -> new Billet(id, billet, "", List.of(new Places(span, ids(names, of))), when));
    }

    static Line either(String billet, Span span, String one, Span otherSpan, String other) {
        return new Line((id, names, when) -> new Billet(id, billet, "", List.of(new Places(span, ids(names, one)),
                new Places(otherSpan, ids(names, other))), when));
    }

    static Line bound(Span span, String... of) {
        return bound(Measure.COUNT, span, Rounding.EXACT, of);
    }

    static Line bound(Measure measure, Span span, Rounding rounding, String... of) {
        return new Line((id, names, when) -> new Bound(id, measure, span, ids(names, of), 1, List.of(), rounding,
                Scope.DEFAULT, when));
    }

    static Line per(Span span, String of, int perCount, String per) {
        return new Line((id, names, when) -> new Bound(id, Measure.COUNT, span, ids(names, of), perCount,
                ids(names, per), Rounding.EXACT, Scope.DEFAULT, when));
    }

    static Line boundIn(Reckoning reckoning, String formation, Span span, String... of) {
        return new Line((id, names, when) -> new Bound(id, Measure.COUNT, span, ids(names, of), 1, List.of(),
                Rounding.EXACT, new Scope(reckoning, Optional.ofNullable(formation).map(names)), when));
    }

    static Line taking(String subject, Relation relation, String... objects) {
        return new Line((id, names, when) -> new Taking(id, ids(names, subject), relation,
                Optional.empty(), ids(names, objects), Scope.DEFAULT, when));
    }

    static Line keep(int changes) {
        return new Line((id, names, when) -> new Keep(id, changes, when));
    }

    static Line before(int firstCount, String first, int thenCount, String then) {
        return new Line((id, names, when) -> new Before(id, firstCount, names.apply(first), thenCount, names.apply(then),
                when));
    }

    static Line says(String text) {
        return new Line((id, names, when) -> new Says(id, text, when));
    }

    static Line mend(String text) {
        return new Line((id, names, when) -> new MendText(id, text, when));
    }
}
