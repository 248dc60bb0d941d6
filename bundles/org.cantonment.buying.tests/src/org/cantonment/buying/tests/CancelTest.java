package org.cantonment.buying.tests;

import static org.cantonment.buying.tests.Shop.EUR;
import static org.cantonment.buying.tests.Shop.eur;
import static org.cantonment.buying.tests.Shop.id;
import static org.cantonment.buying.tests.Shop.offer;
import static org.cantonment.buying.tests.Shop.target;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

import org.cantonment.buying.growth.Grower;
import org.cantonment.buying.growth.Growth;
import org.cantonment.buying.plan.Alternatives;
import org.cantonment.buying.plan.Answer;
import org.cantonment.buying.plan.Plan;
import org.cantonment.buying.plan.Planner;
import org.cantonment.buying.plan.Priorities;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Stage;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.reach.Asked;
import org.cantonment.buying.reach.Cost;
import org.cantonment.buying.reach.Costs;
import org.cantonment.buying.reach.Near;
import org.cantonment.buying.reach.Reach;
import org.cantonment.buying.reach.Strength;
import org.cantonment.buying.worth.Valuer;
import org.cantonment.buying.worth.Worth;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.domain.rules.Stands;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Turnout;
import org.junit.jupiter.api.Test;

/** Whenever an answer is no longer wanted: what is said is true, and nobody is left to wait for long. */
class CancelTest {

    private static final int TYPES = 12;

    /** Boxes and sellers with terms, parts with choices, lists, stand-ins with one meaning. */
    private static Shop shop(long seed, int boxes) {
        Random random = new Random(seed);
        Shop shop = new Shop();
        for (int t = 0; t < TYPES; t++) {
            shop.pieces("T" + t);
        }
        for (int p = 0; p < TYPES / 2; p++) {
            shop.part("P" + p, "1 T" + p, "2 T" + (p + 1), "1 T" + (p + 5));
        }
        for (int b = 0; b < boxes; b++) {
            shop.box("B" + b, (1 + random.nextInt(4)) + " T" + random.nextInt(TYPES) + ", " + (1 + random.nextInt(3)) + " P"
                    + random.nextInt(TYPES / 2), (4 + random.nextInt(20)) + "." + (10 + random.nextInt(80)));
        }
        shop.box("S0", "3 T0", "9.00").box("S1", "1 P1", "6.00").box("S2", "2 P2", "8.00");
        return shop.bundle("Whole", "3 T0, 2 P1, 2 P2", "19.00").seller("Quay", "4.50", "40.00", "5 from 30.00", 3,
                offer("Q1", 6, "B0", eur("5.00")), offer("Q2", -1, "B1", eur("6.40")), offer("Q3", 2, "Whole", eur("17.00")));
    }

    private static List<Target> lists(Shop shop, long seed, int stages) {
        Random random = new Random(seed + 99);
        Allowance allowance = shop.allowance(new Stands(Id.of("Book/Card").line(1), List.of(id("T1")), List.of(id("T2")),
                OptionalInt.empty(), false, Validity.ALWAYS), new OneTable(Id.of("Book/Card").line(2), Validity.ALWAYS));
        List<Target> lists = new ArrayList<>();
        for (int l = 0; l < 3; l++) {
            StringBuilder needs = new StringBuilder((2 + random.nextInt(4)) + " T1, " + (2 + random.nextInt(4)) + " T2");
            for (int k = 0; k < 4; k++) {
                needs.append(", ").append(1 + random.nextInt(5)).append(" T").append(random.nextInt(TYPES));
            }
            lists.add(new Target(Id.of("L" + l), "L" + l, l % stages, Shop.needs(needs.toString()), allowance));
        }
        return lists;
    }

    private static Question question(long seed, int boxes) {
        Shop shop = shop(seed, boxes);
        return Question.of(shop.market(), Shop.shelf("1 T0, 1 T3"), lists(shop, seed, 1));
    }

    /** It is a plan or there is none yet; nothing is said to be proven that is not. */
    private static void isTrue(Answer answer, Plan best) {
        assertFalse(answer.impossible());
        assertFalse(answer.bound().orElseThrow().isGreaterThan(best.total()));
        answer.plan().ifPresent(plan -> isTrue(plan, best));
    }

    private static void isTrue(Plan plan, Plan best) {
        assertFalse(plan.total().isLessThan(best.total()));
        assertFalse(plan.bound().isGreaterThan(best.total()));
        assertTrue(plan.turnouts().stream().allMatch(Turnout::complete));
        if (plan.proven()) {
            assertEquals(best.total(), plan.total());
        }
        if (plan.proven() && plan.settled()) {
            assertEquals(best.purchases(), plan.purchases());
        }
    }

    private static <T> T last(List<T> all) {
        return all.get(all.size() - 1);
    }

    @Test
    void aPlanIsTheBestSoFarOrNoneYet() {
        int unproven = 0;
        for (long seed = 0; seed < 5; seed++) {
            Question question = question(seed, 24);
            List<Answer> answers = Nth.each(token -> Planner.plan(question, EUR, token, Progress.SILENT));
            Plan best = last(answers).plan().orElseThrow();
            assertTrue(best.proven());
            answers.forEach(answer -> isTrue(answer, best));
            assertTrue(answers.get(0).plan().isEmpty());
            unproven += answers.stream().anyMatch(answer -> answer.plan().filter(plan -> !plan.proven()).isPresent()) ? 1 : 0;
        }
        assertTrue(unproven > 0);
    }

    @Test
    void whyThereIsNoPlanIsToldAsFarAsItIsKnown() {
        Shop shop = shop(1, 8);
        Question question = Question.of(shop.market(), Supply.NONE, lists(shop, 1, 1)).with(List.of(Stage.OPEN.with(eur("9.00"))),
                false);
        List<Answer> answers = Nth.each(token -> Planner.plan(question, EUR, token, Progress.SILENT));
        List<String> why = codes(last(answers).findings());
        assertEquals(List.of("buying.budget"), why);
        assertTrue(last(answers).impossible());
        answers.forEach(answer -> assertTrue(answer.plan().isEmpty() && why.containsAll(codes(answer.findings()))));
    }

    private static List<String> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }

    @Test
    void whatIsLeftUnderABudgetIsSettledOrItIsNot() {
        Question question = question(2, 10);
        List<Priorities> all = Nth.each(token -> Priorities.of(question, eur("35.00"), EUR, token, Progress.SILENT));
        Priorities whole = last(all);
        assertFalse(whole.left().isEmpty());
        List<Id> beyond = whole.left().stream().map(one -> one.target().id()).toList();
        for (Priorities one : all) {
            assertEquals(3, one.kept().size() + one.left().size());
            one.left().stream().filter(Priorities.Left::settled).forEach(left -> assertTrue(beyond.contains(left.target().id())));
        }
        assertFalse(all.get(0).left().get(0).settled());
    }

    @Test
    void nextBestPlansLeaveOutNothingCheaper() {
        Question question = question(3, 7);
        List<List<Plan>> all = Nth.each(token -> Alternatives.of(question, eur("6.00"), 4, EUR, token));
        List<List<Plan>> some = all.subList(0, all.size() - 1);
        List<String> whole = last(all).stream().map(Plan::total).map(Object::toString).toList();
        assertTrue(whole.size() > 1);
        some.forEach(plans -> assertEquals(whole.subList(0, plans.size()),
                plans.stream().map(Plan::total).map(Object::toString).toList()));
    }

    @Test
    void aWorthThatWasNotFoundIsNotSaidToBeNone() {
        Shop shop = shop(4, 14);
        Question player = Question.of(shop.market(), Supply.NONE, lists(shop, 4, 1));
        List<Worth> all = Nth.each(token -> Valuer.of(id("Whole"), List.of(shop.range()), shop.market(), Optional.of(player), EUR,
                token, Progress.SILENT));
        Worth whole = last(all);
        for (Worth one : all) {
            assertEquals(whole.price(), one.price());
            assertEquals(List.of(), one.findings());
            one.singles().ifPresent(plan -> isTrue(plan, whole.singles().orElseThrow()));
            one.player().ifPresent(to -> isTrue(to.with(), whole.player().orElseThrow().with()));
        }
        assertTrue(all.get(0).singles().isEmpty());
    }

    @Test
    void reachIsToldWholeOrNotAtAll() {
        for (long seed = 0; seed < 12; seed++) {
            ReachCase drawn = new ReachCase(seed);
            Asked asked = drawn.asked(Strength.MOST);
            List<Optional<Near>> all = Nth.each(token -> near(drawn, asked, token));
            Near whole = last(all).orElse(null);
            all.forEach(one -> one.ifPresent(near -> assertEquals(whole, near)));
            if (whole != null && whole.lacking() > 0) {
                costs(drawn, asked, whole);
            }
        }
    }

    private static Optional<Near> near(ReachCase drawn, Asked asked, CancelToken token) {
        try {
            return new Reach(drawn.shop.market().catalogue(), drawn.supply).near(asked, token);
        } catch (Cancelled noLongerWanted) {
            return Optional.empty();
        }
    }

    private static void costs(ReachCase drawn, Asked asked, Near near) {
        List<Cost> all = Nth.each(token -> new Costs(drawn.shop.market(), EUR, drawn.supply).cost(asked, near.filling(), token));
        Cost whole = last(all);
        for (Cost one : all) {
            if (one.proven()) {
                assertEquals(whole.total(), one.total());
            }
            one.total().ifPresent(total -> assertFalse(total.isLessThan(whole.total().orElseThrow())));
        }
    }

    @Test
    void aGrowthPlanLeavesOutWhatItDoesNotKnow() {
        for (boolean saved : List.of(true, false)) {
            Shop shop = shop(5, 8);
            List<Stage> stages = List.of(Stage.OPEN.with(eur("60.00")), Stage.OPEN.with(eur("40.00")), Stage.OPEN.with(eur("30.00")));
            Question question = new Question(shop.market(), Supply.NONE, lists(shop, 5, 3), stages, saved, Map.of());
            List<Growth> all = Nth.each(token -> Grower.grow(question, EUR, token, Progress.SILENT));
            grown(all);
        }
        Shop shop = shop(5, 8);
        grown(Nth.each(token -> Grower.grow(new Question(shop.market(), Supply.NONE, lists(shop, 5, 3),
                List.of(Stage.OPEN.with(eur("1.00")), Stage.OPEN, Stage.OPEN), false, Map.of()), EUR, token, Progress.SILENT)));
    }

    private static void grown(List<Growth> all) {
        Growth whole = last(all);
        for (Growth one : all) {
            if (whole.answer().plan().isPresent()) {
                isTrue(one.answer(), whole.answer().plan().get());
            } else {
                assertTrue(one.answer().plan().isEmpty());
            }
            // What all rounds together lack is known before it is settled which round is the first that is short.
            assertTrue(one.shortfall().filter(Growth.Shortfall::settled).isEmpty() || one.shortfall().equals(whole.shortfall()));
            assertTrue(one.stepwise().isEmpty() || one.stepwise().equals(whole.stepwise()));
            assertTrue(one.advice().isEmpty() || one.advice().equals(whole.advice()));
        }
    }

    /** Between two questions there is never more work than for one ware, one row, one exchange or one list. */
    @Test
    void everyPhaseAsksWhetherItIsStillWanted() {
        Question question = question(6, 120);
        Nth token = Nth.watching();
        Plan plan = Planner.plan(question, EUR, token, Progress.SILENT).plan().orElseThrow();
        assertTrue(plan.proven());
        int wares = question.market().wares().size();
        assertTrue(token.by("Stores") >= wares);
        assertTrue(token.by("Purchases") >= wares);
        for (String phase : List.of("Formulation", "HallRows", "Unions", "RowReductions", "ColumnReductions", "Substitution",
                "DualSimplex", "RoundingCuts", "Search")) {
            assertTrue(token.by(phase) > 0, phase);
        }
        assertTrue(token.by("RowReductions") > token.by("Reduction"));
        assertTrue(token.by("DualSimplex") > token.by("Search"));
        assertTrue(token.by("Muster") >= question.targets().size());
    }

    /** A programme that is no longer wanted is not even laid out: thousands of lists are no reason to wait. */
    @Test
    void aQuestionOfAnySizeIsGivenUpAtOnce() {
        Shop shop = shop(7, 60);
        List<Target> many = new ArrayList<>();
        for (int i = 0; i < 2_000; i++) {
            many.add(target("L" + i, (1 + i % 40) + " T" + i % TYPES));
        }
        Question question = Question.of(shop.market(), Supply.NONE, many);
        long[] asked = {0};
        Answer answer = Planner.plan(question, EUR, () -> ++asked[0] > 100, Progress.SILENT);
        assertTrue(answer.plan().isEmpty());
        assertTrue(asked[0] < 110, "asked " + asked[0] + " times");
    }
}
