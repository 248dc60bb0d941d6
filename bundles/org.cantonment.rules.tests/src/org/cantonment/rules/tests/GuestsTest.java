package org.cantonment.rules.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.common.Setting;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.YesNoValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetText;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.KnownCheck;
import org.cantonment.rules.guest.Origin;
import org.junit.jupiter.api.Test;

/** Checks of others that behave. */
class GuestsTest {

    private static final Duration LONG = Duration.ofMinutes(1);
    private static final CheckUse USE = Visitor.use("River-Crossing");

    private static Guests with(Function<Question, List<Finding>> answer) {
        Guests guests = new Guests(LONG);
        guests.enter(new Visitor("River-Crossing", answer), Visitor.from("org.fords"));
        assertEquals(List.of(), guests.refusals());
        return guests;
    }

    private static NumberValue number(int value) {
        return new NumberValue(BigDecimal.valueOf(value), false);
    }

    private static List<String> lines(Guests guests, Setting... settings) {
        return guests.ofLines(List.of(Visitor.use("River-Crossing", settings))).stream().map(Finding::message).toList();
    }

    @Test
    void aCheckSeesListPointsAndSettingsAndIsHeard() {
        Guests guests = with(question -> {
            assertEquals(36, question.used());
            assertEquals(36, question.points(Id.of("Anna/4#1")));
            assertEquals(3, question.counts().get(Id.of("Lake/Barge")));
            assertEquals(10, question.count("Banks"));
            assertEquals(false, question.yes("Strict"));
            assertEquals(Visitor.SEASON, question.campaign().orElseThrow());
            return List.of(Visitor.TOO_FEW.at(Id.of("Anna/4#1"), "Too few banks.",
                    new Mend("Take fewer.", List.of(new SetCount(Id.of("Anna/4#1"), 1)))));
        });
        Finding heard = Visitor.ask(guests, Visitor.use("River-Crossing", new Setting("Banks", number(10)))).get(0);
        assertEquals("check.river-crossing.too-few", heard.code());
        assertEquals(Severity.BREACH, heard.severity());
        assertEquals(Id.of("Season#9"), heard.rule().orElseThrow());
        assertEquals(List.of("Take fewer."), heard.mends().stream().map(Mend::label).toList());
        assertEquals(List.of(), lines(guests, new Setting("Banks", number(10))));
    }

    @Test
    void theCampaignsLineSaysHowGraveItIsButANoteStaysOne() {
        Guests guests = with(question -> List.of(Visitor.BY_THE_WAY.at(Id.of("Anna/4"), "Nice banks."),
                Visitor.TOO_FEW.at(Id.of("Anna/4"), "Too few banks.")));
        CheckUse caution = new CheckUse(USE.id(), USE.name(), Optional.of(Severity.CAUTION), List.of(), Validity.ALWAYS);
        assertEquals(List.of(Severity.CAUTION, Severity.NOTE),
                Visitor.ask(guests, caution).stream().map(Finding::severity).toList());
    }

    @Test
    void aCheckIsAskedOnlyWhenItsLineHolds() {
        CheckUse later = new CheckUse(USE.id(), USE.name(), Optional.empty(), List.of(),
                Validity.of(new InRounds(2, 3)));
        AtomicInteger asked = new AtomicInteger();
        Guests guests = with(question -> {
            asked.incrementAndGet();
            return List.of();
        });
        assertEquals(List.of(), Visitor.ask(guests, later));
        assertEquals(0, asked.get());
    }

    @Test
    void aCheckThatIsNotThereIsMissedAtTheLine() {
        Guests guests = new Guests(LONG);
        assertEquals(List.of(), Visitor.ask(guests, USE));
        assertEquals(List.of("No check called 'River-Crossing' is installed here, so nothing is judged by it."),
                lines(guests));
        guests.enter(new Visitor("River-Crosing", question -> List.of()), Visitor.from("org.fords"));
        Mend mend = guests.ofLines(List.of(USE)).get(0).mends().get(0);
        assertEquals("Write River-Crosing.", mend.label());
        assertEquals(List.of(new SetText(USE.id(), "River-Crosing")), mend.actions());
    }

    @Test
    void settingsThatDoNotFitAreFoundWithMends() {
        Guests guests = with(question -> List.of(Visitor.TOO_FEW.at(Id.of("Anna/4"), "Too few banks.")));
        record Case(Setting setting, String message, String mend) {
        }
        SettingValue yes = new YesNoValue(true);
        for (Case one : List.of(
                new Case(new Setting("Bnaks", number(3)), "The check River-Crossing takes no setting Bnaks.", "Write Banks 3."),
                new Case(new Setting("Fords", yes), "The check River-Crossing takes no setting Fords.", "It takes Banks, Strict."),
                new Case(new Setting("Banks", yes),
                        "The check River-Crossing takes a whole number from 1 to 20 for Banks.", "Write Banks 2."),
                new Case(new Setting("Banks", number(21)),
                        "The check River-Crossing takes a whole number from 1 to 20 for Banks.", "Write Banks 20."),
                new Case(new Setting("Banks", new NumberValue(new BigDecimal("1.5"), false)),
                        "The check River-Crossing takes a whole number from 1 to 20 for Banks.", "Write Banks 2."))) {
            CheckUse use = Visitor.use("River-Crossing", one.setting());
            Finding found = guests.ofLines(List.of(use)).get(0);
            assertEquals("check.setting", found.code());
            assertEquals(one.message(), found.message());
            assertEquals(one.mend(), found.mends().get(0).label());
            assertEquals(List.of(), Visitor.ask(guests, use));
        }
        assertEquals(1, lines(guests, new Setting("Banks", number(3)), new Setting("Banks", number(3))).size());
    }

    @Test
    void aCheckThatGoesIsMissed() {
        Guests guests = new Guests(LONG);
        Visitor visitor = new Visitor("River-Crossing", question -> List.of());
        AtomicInteger told = new AtomicInteger();
        Runnable noMore = guests.onChange(told::incrementAndGet);
        guests.enter(visitor, Visitor.from("org.fords"));
        assertEquals(List.of(), lines(guests));
        long version = guests.version();
        guests.leave(visitor);
        assertEquals(1, lines(guests).size());
        assertTrue(guests.version() > version);
        assertEquals(2, told.get());
        noMore.run();
        guests.enter(visitor, Visitor.from("org.fords"));
        assertEquals(2, told.get());
    }

    @Test
    void whoeverAskedMayCancel() {
        Guests guests = with(question -> {
            question.cancel().check();
            return List.of();
        });
        assertThrows(Cancelled.class, () -> guests.ask(List.of(USE), Visitor.about(Visitor.LIST, () -> true)));
        assertEquals(Optional.empty(), guests.known("River-Crossing").orElseThrow().shutOut());
    }

    @Test
    void manyChecksOnOneListCostOneThread() {
        Guests guests = new Guests(LONG);
        Set<Long> threads = new ConcurrentSkipListSet<>();
        CheckUse[] uses = new CheckUse[500];
        for (int i = 0; i < uses.length; i++) {
            uses[i] = Visitor.use("Check-" + i);
            guests.enter(new Visitor("Check-" + i, question -> {
                threads.add(Thread.currentThread().getId());
                return List.of(Visitor.BY_THE_WAY.at(question.list().id(), "Here."));
            }), Visitor.from("org.fords"));
        }
        assertEquals(500, Visitor.ask(guests, uses).size());
        assertEquals(500, Visitor.ask(guests, uses).size());
        assertEquals(1, threads.size());
    }

    @Test
    void ofTwoWithOneNameTheEarlierIsAskedAndTheOtherNamed() {
        Guests guests = new Guests(LONG);
        Origin dropped = new Origin("org.other", "2.0.0", Optional.of(Path.of("other.jar")), 5);
        guests.enter(new Visitor("River-Crossing", question -> List.of(Visitor.TOO_FEW.at(Id.of("Anna/4"), "Mine."))),
                dropped);
        Visitor first = new Visitor("River-Crossing",
                question -> List.of(Visitor.TOO_FEW.at(Id.of("Anna/4"), "The true one.")));
        guests.enter(first, Visitor.from("org.fords"));
        assertEquals("The true one.", Visitor.ask(guests, USE).get(0).message());
        assertEquals(List.of("The check River-Crossing of plug-in org.other 2.0.0 (other.jar) has the name of a check of"
                + " plug-in org.fords 1.0.0, so it is not asked; only that one is."), lines(guests));
        guests.leave(first);
        assertEquals("Mine.", Visitor.ask(guests, USE).get(0).message());
        assertEquals(List.of("River-Crossing"), guests.known().stream().map(KnownCheck::name).toList());
    }
}
