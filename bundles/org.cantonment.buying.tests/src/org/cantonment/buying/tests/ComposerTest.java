package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.EUR;
import static org.cantonment.buying.tests.Shop.eur;
import static org.cantonment.buying.tests.Shop.id;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

import org.cantonment.buying.growth.Brief;
import org.cantonment.buying.growth.Composer;
import org.cantonment.buying.growth.Composer.Composed;
import org.cantonment.buying.growth.Grower;
import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.growth.Guide;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.rules.Billet;
import org.cantonment.domain.rules.Bound;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Formation;
import org.cantonment.domain.rules.Keep;
import org.cantonment.domain.rules.Limit;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Places;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.rules.Scope;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Unit;
import org.cantonment.domain.shelf.Taste;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.domain.shelf.WishFor;
import org.cantonment.rules.Judge;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;
import org.junit.jupiter.api.Test;

/** The three rounds of the growth test, but the lists are composed. */
class ComposerTest {

    private static final Shop SHOP = new Shop().pieces("Foot", "Crank", "Gun").part("Frame", "1 Crank", "1 Gun")
            .box("Marsh-Box", "10 Foot", "10.00").box("Car-Box", "2 Frame", "12.00")
            .box("Starter", "10 Foot, 1 Frame", "17.00");

    private static Id rule(String name) {
        return Id.of("Book", name);
    }

    private static Unit unit(String name, int points, String needs) {
        String[] words = needs.split(" ");
        Id id = rule(name);
        return new Unit(id, "", List.of(
                new Strength(id.line(1), 1, 1, new Cost(points, false), List.of(), Validity.ALWAYS),
                new Needs(id.line(2), false, List.of(new Need(Integer.parseInt(words[0]), List.of(id(words[1])))),
                        Validity.ALWAYS)), List.of());
    }

    private static Fact billet(int line, String name, Span span, String... of) {
        List<Id> ids = new ArrayList<>();
        for (String one : of) {
            ids.add(rule(one));
        }
        return new Billet(rule("Band").line(line), name, "", List.of(new Places(span, ids)), Validity.ALWAYS);
    }

    private static Ruling ruling(int changes) {
        Formation band = new Formation(rule("Band"), "", List.of(billet(1, "Line", Span.of(1, 2), "Ten-Foot"),
                billet(2, "Cars", Span.atMost(2), "Crank-Car", "Gun-Car")), List.of());
        List<Limit> limits = changes < 0 ? List.of() : List.of(new Limit(rule("Steady"), "", Optional.empty(),
                List.of(new Keep(rule("Steady").line(1), changes, Validity.ALWAYS)), List.of()));
        RuleSet book = new RuleSet(Id.of("Book"), "", List.of(), Validity.ALWAYS, List.of(), List.of(),
                List.of(new Era(rule("Reed-Year"), "", Optional.empty(), List.of())), List.of(),
                List.of(unit("Ten-Foot", 20, "10 Foot"), unit("Crank-Car", 15, "1 Crank"), unit("Gun-Car", 22, "1 Gun")),
                List.of(band), List.of(), limits, List.of(), List.of(), List.of(), List.of(), List.of());
        return RulingCompiler.compile(List.of(book), Occasion.in(rule("Reed-Year")));
    }

    private static Composed compose(int changes, List<Wish> wishes, int... leastAndLimits) {
        List<Brief> briefs = new ArrayList<>();
        for (int i = 0; i < leastAndLimits.length; i += 2) {
            briefs.add(new Brief(Id.of("Round-" + (i / 2 + 1)), "round " + (i / 2 + 1), i / 2, ruling(changes),
                    Situation.BARE.withPoints(leastAndLimits[i + 1], Optional.empty()), Allowance.EXACT, leastAndLimits[i],
                    wishes));
        }
        return Composer.compose(briefs, Optional.empty(), Guide.of(SHOP.market(), Supply.NONE), CancelToken.NEVER, Progress.SILENT);
    }

    private static Growth grow(Composed composed, String... budgets) {
        List<Stage> stages = new ArrayList<>();
        for (String budget : budgets) {
            stages.add(Stage.OPEN.with(eur(budget)));
        }
        return Grower.grow(new Question(SHOP.market(), Supply.NONE, composed.targets(), stages, false, Map.of()), EUR,
                CancelToken.NEVER, Progress.SILENT);
    }

    @Test
    void composesListsThatTheJudgeFindsLegalAndThePlanFields() {
        Composed composed = compose(-1, List.of(), 35, 40, 57, 60, 77, 80);
        composed.lists().values().forEach(list -> assertTrue(Judge.judge(ruling(-1), list,
                Situation.BARE.withPoints(80, Optional.empty())).legal()));
        Plan plan = grow(composed, "25.00", "10.00", "15.00").answer().plan().orElseThrow();
        assertEquals(eur("32.00"), plan.total());
        assertEquals(List.of(35, 57, 77), plan.fielded().stream().map(one -> one.choice().orElseThrow().points()).toList());
        assertEquals(3, plan.turnouts().size());
    }

    /** Least money first, then the fewest pieces, and only then the most points. */
    @Test
    void amongEqualCostsItUsesTheMostPoints() {
        Composed composed = compose(-1, List.of(), 0, 60);
        Plan plan = grow(composed, "50.00").answer().plan().orElseThrow();
        assertEquals(eur("10.00"), plan.total());
        Plan owned = Grower.grow(new Question(SHOP.market(), Shop.shelf("20 Foot, 1 Gun"), composed.targets(),
                List.of(Stage.OPEN), false, Map.of()), EUR, CancelToken.NEVER, Progress.SILENT).answer().plan().orElseThrow();
        assertEquals(eur("0.00"), owned.total());
        assertEquals(42, owned.fielded().get(0).choice().orElseThrow().points());
    }

    /** Round 1 can only be two of foot, round 2 only foot and both cars: one foot is struck and two cars come. */
    @Test
    void keepsToContinuity() {
        assertEquals(List.of(), compose(-1, List.of(), 40, 40, 57, 57).without());
        assertEquals(List.of(1), compose(0, List.of(), 40, 40, 57, 57).without());
        Composed composed = compose(3, List.of(), 40, 40, 57, 57);
        assertEquals(List.of(), composed.without());
        Target second = composed.targets().stream().filter(one -> one.stage() == 1).findFirst().orElseThrow();
        Target first = composed.targets().stream().filter(one -> one.stage() == 0).findFirst().orElseThrow();
        assertEquals(Optional.of(Set.of(first.id())), second.choice().orElseThrow().after());
    }

    @Test
    void neverMeansNever() {
        Wish wish = new Wish(Id.of("Shelf/Wish"), "", List.of(new WishFor(Id.of("Shelf/Wish").line(1), Taste.NEVER,
                List.of(rule("Gun-Car")))), List.of(), List.of(), OptionalInt.empty(), List.of());
        Composed composed = compose(-1, List.of(wish), 35, 40, 57, 57);
        assertEquals(List.of(1), composed.without());
    }

    /** "Exactly one host, at least two guns": no draft begins so, and both are learned from what the judge refuses. */
    @Test
    void learnsFromRefusalsAndNestsFormations() {
        Formation band = new Formation(rule("Band"), "", List.of(billet(1, "Line", Span.of(1, 2), "Ten-Foot"),
                billet(2, "Cars", Span.atMost(2), "Crank-Car", "Gun-Car")), List.of());
        Formation host = new Formation(rule("Host"), "", List.of(new Billet(rule("Host").line(1), "Bands", "",
                List.of(new Places(Span.of(2, 3), List.of(rule("Band")))), Validity.ALWAYS)), List.of());
        Ruling ruling = ruling(List.of(band, host), List.of(bound("One-Host", Span.exactly(1), "Host"),
                bound("Guns", Span.atLeast(2), "Gun-Car")));
        Situation situation = Situation.BARE.withPoints(100, Optional.empty());
        Composed composed = Composer.compose(List.of(new Brief(Id.of("Round-1"), "round 1", 0, ruling, situation, Allowance.EXACT,
                84, List.of())), Optional.empty(), Guide.of(SHOP.market(), Supply.NONE), CancelToken.NEVER, Progress.SILENT);
        assertEquals(List.of(), composed.without());
        composed.lists().values().forEach(list -> {
            assertTrue(Judge.judge(ruling, list, situation).legal());
            assertEquals(2, list.body().entries().get(0).body().entries().stream().filter(one ->
                    one.what().equals(rule("Band"))).count());
        });
        Plan plan = grow(composed, "100.00").answer().plan().orElseThrow();
        // Two bands of ten foot and two guns: 84 points out of two boxes of foot and one of cars.
        assertEquals(eur("32.00"), plan.total());
    }

    /** What no list can keep is told with the rule that stands in the way. */
    @Test
    void saysWhatStandsInTheWay() {
        Formation band = new Formation(rule("Band"), "", List.of(billet(1, "Line", Span.of(1, 2), "Ten-Foot")), List.of());
        Ruling ruling = ruling(List.of(band), List.of(bound("Guns", Span.atLeast(1), "Gun-Car")));
        Composed composed = Composer.compose(List.of(new Brief(Id.of("Round-1"), "round 1", 0, ruling,
                Situation.BARE.withPoints(60, Optional.empty()), Allowance.EXACT, 20, List.of())), Optional.empty(), Guide.NONE, CancelToken.NEVER,
                Progress.SILENT);
        Composer.Miss miss = composed.misses().get(0);
        assertTrue(miss.tried() > 0);
        assertEquals(Optional.of("Guns"), miss.reason());
    }

    private static Limit bound(String name, Span span, String of) {
        return new Limit(rule(name), "", Optional.empty(), List.of(new Bound(rule(name).line(1), Measure.COUNT, span,
                List.of(rule(of)), 1, List.of(), Rounding.EXACT, Scope.DEFAULT, Validity.ALWAYS)), List.of());
    }

    private static Ruling ruling(List<Formation> formations, List<Limit> limits) {
        RuleSet book = new RuleSet(Id.of("Book"), "", List.of(), Validity.ALWAYS, List.of(), List.of(),
                List.of(new Era(rule("Reed-Year"), "", Optional.empty(), List.of())), List.of(),
                List.of(unit("Ten-Foot", 20, "10 Foot"), unit("Crank-Car", 15, "1 Crank"), unit("Gun-Car", 22, "1 Gun")),
                formations, List.of(), limits, List.of(), List.of(), List.of(), List.of(), List.of());
        return RulingCompiler.compile(List.of(book), Occasion.in(rule("Reed-Year")));
    }
}
