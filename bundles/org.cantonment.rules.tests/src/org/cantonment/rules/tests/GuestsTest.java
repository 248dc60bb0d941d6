package org.cantonment.rules.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Setting;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.YesNoValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.Judge;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.RuleCheck;
import org.cantonment.rules.compile.RulingCompiler;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.Test;

/** Checks of others, well and ill behaved. */
class GuestsTest {

    private static final Duration LONG = Duration.ofMinutes(1);

    private final RuleSet book = new BookOf("Lake").unit("Barge", Line.strength(1, 12)).build();
    private final ForceList list = new ListOf("Anna/4", "Lake").add(ListOf.some(3, "Barge")).build();

    private record Visitor(String name, Function<Question, List<Finding>> answer) implements RuleCheck {

        @Override
        public String label() {
            return "Crossing the river";
        }

        @Override
        public List<FindingKind> findings() {
            return List.of(new FindingKind("too-few", Severity.BREACH, "Too few banks."));
        }

        @Override
        public String about() {
            return "Counts banks.";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(Parameter.number("Banks", "Banks", "How many banks there are.").presetTo(2),
                    Parameter.yesNo("Strict", "Strict", "Or not.").presetTo(false));
        }

        @Override
        public List<Finding> check(Question question) {
            return answer.apply(question);
        }
    }

    private static CheckUse use(Optional<Severity> severity, Setting... settings) {
        return new CheckUse(Id.of("Season#9"), "River-Crossing", severity, List.of(settings), Validity.ALWAYS);
    }

    private List<Finding> ask(Guests guests, CheckUse use, Situation situation) {
        Ruling ruling = RulingCompiler.compile(List.of(book), Occasion.UNKNOWN);
        return guests.ask(use, List.of(book), ruling, list, situation, Judge.judge(ruling, list, Situation.BARE));
    }

    private List<Finding> ask(Guests guests, CheckUse use) {
        return ask(guests, use, Situation.BARE);
    }

    private static Guests with(Duration patience, Function<Question, List<Finding>> answer) {
        Guests guests = new Guests(patience);
        assertEquals(Optional.empty(), guests.enter(new Visitor("River-Crossing", answer)));
        return guests;
    }

    private static Finding breach(String at) {
        return Finding.of("too-few", Severity.BREACH, Id.of(at), "Too few banks.");
    }

    @Test
    void aCheckSeesListPointsAndSettingsAndIsHeard() {
        Guests guests = with(LONG, question -> {
            assertEquals(36, question.used());
            assertEquals(36, question.points(Id.of("Anna/4#1")));
            assertEquals(new NumberValue(BigDecimal.TEN, false), question.settings().get("Banks"));
            assertEquals(new YesNoValue(false), question.settings().get("Strict"));
            return List.of(breach("Anna/4#1"));
        });
        List<Finding> heard = ask(guests, use(Optional.empty(),
                new Setting("Banks", new NumberValue(BigDecimal.TEN, false))));
        assertEquals("check.too-few", heard.get(0).code());
        assertEquals(Severity.BREACH, heard.get(0).severity());
        assertEquals(Id.of("Season#9"), heard.get(0).rule().orElseThrow());
        assertEquals(Severity.CAUTION, ask(guests, use(Optional.of(Severity.CAUTION),
                new Setting("Banks", new NumberValue(BigDecimal.TEN, false)))).get(0).severity());
    }

    @Test
    void aCheckThatIsNotThereOrWronglySetIsAFindingAtTheLine() {
        assertEquals("check.missing", ask(new Guests(LONG), use(Optional.empty())).get(0).code());
        Guests guests = with(LONG, question -> List.of());
        assertEquals("The check River-Crossing takes no setting Fords.",
                ask(guests, use(Optional.empty(), new Setting("Fords", new YesNoValue(true)))).get(0).message());
        assertEquals("The check River-Crossing takes a number for Banks.",
                ask(guests, use(Optional.empty(), new Setting("Banks", new YesNoValue(true)))).get(0).message());
        CheckUse later = new CheckUse(Id.of("Season#9"), "River-Crossing", Optional.empty(), List.of(),
                Validity.of(new InRounds(2, 3)));
        assertEquals(List.of(), ask(with(LONG, question -> null), later));
    }

    @Test
    void aCheckThatThrowsIsNamedAndShutOut() {
        AtomicInteger asked = new AtomicInteger();
        Guests guests = with(LONG, question -> {
            asked.incrementAndGet();
            throw new IllegalStateException("no river");
        });
        Finding first = ask(guests, use(Optional.empty())).get(0);
        assertEquals("check.fault", first.code());
        assertTrue(first.message().startsWith("The check River-Crossing failed: java.lang.IllegalStateException: no river. "),
                first.message());
        assertEquals(first, ask(guests, use(Optional.empty())).get(0));
        assertEquals(1, asked.get());
        assertEquals(Set.of("River-Crossing"), guests.shutOut());
        Guests deep = with(LONG, GuestsTest::endless);
        assertTrue(ask(deep, use(Optional.empty())).get(0).message().contains("StackOverflowError"));
    }

    private static List<Finding> endless(Question question) {
        return endless(question);
    }

    @Test
    void aCheckThatHangsIsNamedAndShutOut() {
        CountDownLatch release = new CountDownLatch(1);
        Guests guests = with(Duration.ofMillis(20), question -> {
            boolean waiting = true;
            while (waiting) {
                try {
                    release.await();
                    waiting = false;
                } catch (InterruptedException deaf) {
                    waiting = release.getCount() > 0;
                }
            }
            return List.of();
        });
        assertTrue(ask(guests, use(Optional.empty())).get(0).message().contains("took longer than 20 ms"));
        assertEquals(Set.of("River-Crossing"), guests.shutOut());
        release.countDown();
    }

    @Test
    void nonsenseIsNoAnswer() {
        List<List<Finding>> answers = Arrays.asList(null, Arrays.asList((Finding) null), List.of(breach("Bela/4#1")),
                List.of(Finding.of("Too few!", Severity.BREACH, Id.of("Anna/4"), "Too few.")),
                List.of(Finding.of("few", Severity.BREACH, Id.of("Anna/4"), " ")),
                List.of(Finding.of("few", null, Id.of("Anna/4"), "Too few.")));
        for (List<Finding> answer : answers) {
            assertEquals("check.fault", ask(with(LONG, question -> answer), use(Optional.empty())).get(0).code());
        }
    }

    @Test
    void aCheckThatCannotSayWhoItIsIsNotLetIn() {
        Guests guests = new Guests(LONG);
        assertTrue(guests.enter(new Visitor("river", question -> List.of())).isPresent());
        assertTrue(guests.enter(new Visitor(null, question -> List.of())).isPresent());
        assertEquals(Map.of(), guests.checks());
    }

    @Test
    void aCheckThatGoesIsMissed() {
        Guests guests = new Guests(LONG);
        Visitor visitor = new Visitor("River-Crossing", question -> List.of());
        guests.enter(visitor);
        assertEquals(List.of(), ask(guests, use(Optional.empty())));
        guests.leave(visitor);
        assertEquals("check.missing", ask(guests, use(Optional.empty())).get(0).code());
    }

    @Test
    void whoeverAskedMayCancel() {
        Guests guests = with(LONG, question -> {
            question.cancel().check();
            return List.of();
        });
        assertThrows(Cancelled.class, () -> ask(guests, use(Optional.empty()), Situation.BARE.withCancel(() -> true)));
        assertEquals(Set.of(), guests.shutOut());
    }
}
