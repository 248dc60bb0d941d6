package org.cantonment.references.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.cantonment.buying.growth.Brief;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Billet;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.Formation;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Places;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Unit;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.cantonment.stock.likeness.Allowance;

/** Rounds with rising limits for an errand's pieces: a book of units that need them, in two formations. */
public final class Campaigns {

    private static final int UNITS = 14;

    private Campaigns() {
    }

    /** What so many rounds ask for; each list uses three quarters of its limit at the least. */
    public static List<Brief> rounds(Errand errand, int rounds, long seed) {
        Ruling ruling = RulingCompiler.compile(List.of(book(errand, new Random(seed))), Occasion.in(id("Era")));
        List<Brief> briefs = new ArrayList<>();
        for (int r = 0; r < rounds; r++) {
            int limit = 60 + 15 * r;
            briefs.add(new Brief(Id.of("Round-" + r), "round " + r, r, ruling,
                    Situation.BARE.withPoints(limit, Optional.empty()), Allowance.EXACT, limit * 3 / 4, List.of()));
        }
        return briefs;
    }

    private static Id id(String name) {
        return Id.of("Book", name);
    }

    private static RuleSet book(Errand errand, Random random) {
        List<Id> types = errand.lists().stream().flatMap(List::stream).map(Requirement::anyOf)
                .filter(anyOf -> anyOf.size() == 1 && anyOf.get(0).name().startsWith("T")).map(anyOf -> anyOf.get(0))
                .distinct().sorted().toList();
        List<Unit> units = new ArrayList<>();
        for (int u = 0; u < UNITS; u++) {
            Id unit = id("Unit-" + u);
            int points = 8 + random.nextInt(18);
            units.add(new Unit(unit, "", List.of(
                    new Strength(unit.line(1), 1, 1, new Cost(points, false), List.of(), Validity.ALWAYS),
                    new Strength(unit.line(2), 2, 2, new Cost(points * 3 / 2, false), List.of(), Validity.ALWAYS),
                    new Needs(unit.line(3), true, List.of(new Need(2 + random.nextInt(3),
                            List.of(types.get(random.nextInt(types.size()))))), Validity.ALWAYS)), List.of()));
        }
        return new RuleSet(Id.of("Book"), "", List.of(), Validity.ALWAYS, List.of(), List.of(),
                List.of(new Era(id("Era"), "", Optional.empty(), List.of())), List.of(), units,
                List.of(formation("Band", 0), formation("Squadron", 4)), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of());
    }

    private static Formation formation(String name, int from) {
        List<Id> units = new ArrayList<>();
        for (int u = from; u < from + 10; u++) {
            units.add(id("Unit-" + u));
        }
        Id card = id(name);
        return new Formation(card, "", List.of(
                new Billet(card.line(1), "Command", "", List.of(new Places(Span.exactly(1), units.subList(0, 3))),
                        Validity.ALWAYS),
                new Billet(card.line(2), "Line", "", List.of(new Places(Span.of(2, 4), units.subList(2, 7))), Validity.ALWAYS),
                new Billet(card.line(3), "Rear", "", List.of(new Places(Span.atMost(3), units.subList(6, 10))),
                        Validity.ALWAYS)), List.of());
    }
}
