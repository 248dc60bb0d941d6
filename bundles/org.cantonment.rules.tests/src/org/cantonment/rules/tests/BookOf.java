package org.cantonment.rules.tests;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Act;
import org.cantonment.domain.rules.Change;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.Expectation;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Formation;
import org.cantonment.domain.rules.Kind;
import org.cantonment.domain.rules.Limit;
import org.cantonment.domain.rules.Places;
import org.cantonment.domain.rules.RuleExample;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Side;
import org.cantonment.domain.rules.Support;
import org.cantonment.domain.rules.Unit;
import org.cantonment.domain.rules.Withdrawal;

/** Builds a rule set for a test as an organiser would write it. A bare name is one of this book's own. */
final class BookOf {

    private final String name;
    private final List<Id> over = new ArrayList<>();
    private final List<Side> sides = new ArrayList<>();
    private final List<Kind> kinds = new ArrayList<>();
    private final List<Era> eras = new ArrayList<>();
    private final List<Unit> units = new ArrayList<>();
    private final List<Formation> formations = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Change> changes = new ArrayList<>();
    private final List<Withdrawal> withdrawals = new ArrayList<>();
    private final List<RuleExample> examples = new ArrayList<>();
    private Validity when = Validity.ALWAYS;

    BookOf(String name, String... over) {
        this.name = name;
        for (String lower : over) {
            this.over.add(Id.of(lower));
        }
    }

    Id id(String what) {
        return what.indexOf('/') < 0 ? Id.of(name, what) : Id.of(what);
    }

    private List<Fact> facts(Id card, Line... lines) {
        List<Fact> facts = new ArrayList<>();
        for (Line line : lines) {
            facts.add(line.at(card.line(facts.size() + 1), this::id));
        }
        return facts;
    }

    BookOf rounds(int first, int last) {
        when = Validity.of(new InRounds(first, last));
        return this;
    }

    BookOf side(String side) {
        sides.add(new Side(id(side), "", List.of()));
        return this;
    }

    BookOf kind(String kind, String... parent) {
        kinds.add(new Kind(id(kind), "", parent.length == 0 ? Optional.empty() : Optional.of(id(parent[0])), List.of()));
        return this;
    }

    /** Eras, each after the one before. */
    BookOf eras(String... some) {
        Optional<Id> before = Optional.empty();
        for (String era : some) {
            eras.add(new Era(id(era), "", before, List.of()));
            before = Optional.of(id(era));
        }
        return this;
    }

    BookOf unit(String unit, Line... lines) {
        units.add(new Unit(id(unit), "", facts(id(unit), lines), List.of()));
        return this;
    }

    BookOf formation(String formation, Line... lines) {
        formations.add(new Formation(id(formation), "", facts(id(formation), lines), List.of()));
        return this;
    }

    BookOf support(String support, Span span, int perCount, String per, String... of) {
        supports.add(new Support(id(support), "", List.of(new Places(span, Line.ids(this::id, of))), perCount,
                per == null ? List.of() : List.of(id(per)), Validity.ALWAYS, List.of(), List.of()));
        return this;
    }

    BookOf limit(String limit, Line... lines) {
        limits.add(new Limit(id(limit), "", Optional.empty(), facts(id(limit), lines), List.of()));
        return this;
    }

    BookOf caution(String limit, Line... lines) {
        limits.add(new Limit(id(limit), "", Optional.of(Severity.CAUTION), facts(id(limit), lines), List.of()));
        return this;
    }

    BookOf change(Direction direction, String target, Line... lines) {
        Id card = id("change-" + (changes.size() + 1));
        changes.add(new Change(card, direction, id(target), Validity.ALWAYS, facts(card, lines), List.of()));
        return this;
    }

    BookOf withdraw(Act act, String... targets) {
        withdrawals.add(new Withdrawal(id("withdrawal-" + (withdrawals.size() + 1)), act, Line.ids(this::id, targets),
                Validity.ALWAYS, List.of()));
        return this;
    }

    BookOf example(String example, ListOf list, Expectation... gives) {
        examples.add(new RuleExample(id(example), "", OptionalInt.empty(), Optional.empty(), OptionalInt.empty(),
                list.build().body(), List.of(gives), List.of()));
        return this;
    }

    /** The limits the other way round; nothing may depend on that. */
    BookOf reversed() {
        Collections.reverse(limits);
        return this;
    }

    RuleSet build() {
        return new RuleSet(Id.of(name), "", over, when, sides, kinds, eras, List.of(), units, formations, supports,
                limits, List.of(), changes, withdrawals, examples, List.of());
    }
}
