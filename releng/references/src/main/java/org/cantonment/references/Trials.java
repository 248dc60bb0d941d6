package org.cantonment.references;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.OfEra;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.Availability;
import org.cantonment.domain.rules.Billet;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Formation;
import org.cantonment.domain.rules.Limit;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Places;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Scope;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Successor;
import org.cantonment.domain.rules.Support;
import org.cantonment.domain.rules.Unit;

/** Draws trials by a seed: three eras with prices of their own, squadrons, supports, limits, and a list of any size. */
public final class Trials {

    private static final String[] ERAS = {"Reed-Year", "Dyke-War", "Long-Thaw"};
    private static final String[] NAMES = {"Staff", "Tread-Troop", "Crank-Troop", "Pike-Car-Troop", "Marsh-Scouts",
        "Marsh-Foot", "Barge"};
    private static final int[] PRICES = {10, 24, 20, 26, 8, 12, 18};
    private static final int CRANK = 2;
    private static final int PIKE = 3;
    private static final int SCOUTS = 4;
    private static final int SQUADRON = 6;

    private final Random random;
    private final int size;
    private final int[][] prices = new int[NAMES.length][ERAS.length];
    private final boolean[] larger = new boolean[NAMES.length];
    private int lines;
    private int cost;

    private Trials(long seed, int size) {
        this.random = new Random(seed);
        this.size = size;
        for (int u = 0; u < NAMES.length; u++) {
            larger[u] = u > 0 && random.nextBoolean();
            for (int e = 0; e < ERAS.length; e++) {
                prices[u][e] = PRICES[u] + random.nextInt(5) - 2 + e;
            }
        }
    }

    /** A trial whose list has so many units. */
    public static Trial draw(long seed, int units) {
        return new Trials(seed, units).draw();
    }

    private Trial draw() {
        ForceList list = list();
        List<Id> eras = new ArrayList<>();
        List<Era> cards = new ArrayList<>();
        for (String name : ERAS) {
            Optional<Id> before = eras.isEmpty() ? Optional.empty() : Optional.of(eras.get(eras.size() - 1));
            eras.add(id(name));
            cards.add(new Era(id(name), "", before, List.of()));
        }
        List<Unit> units = new ArrayList<>();
        for (int u = 0; u < NAMES.length; u++) {
            units.add(new Unit(id(NAMES[u]), "", facts(u), List.of()));
        }
        Support supports = new Support(id("Float"), "", List.of(Places.of(Span.atMost(1), id("Barge"), id("Marsh-Foot"))), 1,
                List.of(id("Squadron")), Validity.ALWAYS, List.of(), List.of());
        RuleSet book = new RuleSet(Id.of("Lake"), "", List.of(), Validity.ALWAYS, List.of(), List.of(), cards, List.of(),
                units, List.of(squadron()), List.of(supports), limits(), List.of(), List.of(), List.of(), List.of(),
                List.of());
        return new Trial(book, eras, 1, list, cost - cost * random.nextInt(12) / 100);
    }

    private static Id id(String name) {
        return Id.of("Lake", name);
    }

    private static Validity from(int era) {
        return Validity.of(new Reach(Optional.of(new OfEra(id(ERAS[era]))), Optional.empty()));
    }

    private List<Fact> facts(int unit) {
        List<Fact> facts = new ArrayList<>();
        Id card = id(NAMES[unit]);
        for (int e = 0; e < ERAS.length; e++) {
            Validity when = e == 0 ? Validity.ALWAYS : from(e);
            facts.add(new Strength(card.line(facts.size() + 1), 3, 3, new Cost(prices[unit][e], false), List.of(), when));
            if (larger[unit]) {
                facts.add(new Strength(card.line(facts.size() + 1), 5, 5, new Cost(prices[unit][e] * 5 / 3, false),
                        List.of(), when));
            }
        }
        if (unit == CRANK) {
            facts.add(new Availability(card.line(facts.size() + 1), Validity.of(new Reach(Optional.empty(),
                    Optional.of(new OfEra(id(ERAS[1])))))));
            facts.add(new Successor(card.line(facts.size() + 1), id(NAMES[PIKE]), random.nextBoolean(), Validity.ALWAYS));
        } else if (unit == PIKE || unit == SCOUTS) {
            facts.add(new Availability(card.line(facts.size() + 1), from(1)));
        }
        return facts;
    }

    private static Formation squadron() {
        Id card = id("Squadron");
        return new Formation(card, "", List.of(billet(card.line(1), "Command", Span.exactly(1), "Staff"),
                billet(card.line(2), "Line", Span.of(2, 4), "Tread-Troop", "Crank-Troop", "Pike-Car-Troop"),
                billet(card.line(3), "Foot", Span.of(0, 2), "Marsh-Scouts", "Marsh-Foot")), List.of());
    }

    private static Billet billet(Id id, String name, Span span, String... of) {
        List<Id> ids = new ArrayList<>();
        for (String some : of) {
            ids.add(id(some));
        }
        return new Billet(id, name, "", List.of(new Places(span, ids)), Validity.ALWAYS);
    }

    private List<Limit> limits() {
        List<Limit> limits = new ArrayList<>();
        limits.add(limit("Armour", Measure.PERCENT_OF_USED, Span.atMost(35 + random.nextInt(25)), "Tread-Troop"));
        limits.add(limit("Few", Measure.COUNT, Span.atMost(1 + size / 5), "Tread-Troop", "Pike-Car-Troop"));
        if (random.nextBoolean()) {
            limits.add(limit("Feet", Measure.COUNT, Span.atLeast(1 + size / 8), "Marsh-Foot"));
        }
        if (random.nextInt(3) == 0) {
            limits.add(limit("Spent", Measure.PERCENT_OF_LIMIT, Span.atLeast(15), "Marsh-Foot", "Barge"));
        }
        return limits;
    }

    private static Limit limit(String name, Measure measure, Span span, String... of) {
        List<Id> ids = new ArrayList<>();
        for (String some : of) {
            ids.add(id(some));
        }
        return new Limit(id(name), "", Optional.empty(), List.of(new Bound(id(name).line(1), measure, span, ids, 1,
                List.of(), Rounding.EXACT, Scope.DEFAULT, Validity.ALWAYS)), List.of());
    }

    private ForceList list() {
        List<Entry> squadrons = new ArrayList<>();
        int left = size;
        while (left > 0) {
            List<Entry> rows = new ArrayList<>();
            Id squadron = line();
            rows.add(entry(0));
            for (int i = 1; i < Math.min(left, SQUADRON); i++) {
                rows.add(entry(i <= PIKE ? 1 + random.nextInt(PIKE) : SCOUTS + random.nextInt(2)));
            }
            left -= rows.size();
            squadrons.add(new Entry(squadron, Optional.empty(), 1, id("Squadron"), OptionalInt.empty(), List.of(),
                    Optional.empty(), "", Optional.empty(), new Body(rows, List.of()), List.of()));
        }
        return new ForceList(Id.of("Ombra/1"), Optional.empty(), OptionalInt.empty(), List.of(), Optional.empty(),
                OptionalInt.empty(), new Body(squadrons, List.of()), List.of(), List.of(), List.of(), List.of());
    }

    private Id line() {
        return Id.of("Ombra/1").line(++lines);
    }

    private Entry entry(int unit) {
        int strength = larger[unit] && random.nextBoolean() ? 5 : 3;
        cost += strength == 5 ? prices[unit][1] * 5 / 3 : prices[unit][1];
        return new Entry(line(), Optional.empty(), 1, id(NAMES[unit]), OptionalInt.of(strength), List.of(),
                Optional.empty(), "", Optional.empty(), Body.EMPTY, List.of());
    }
}
