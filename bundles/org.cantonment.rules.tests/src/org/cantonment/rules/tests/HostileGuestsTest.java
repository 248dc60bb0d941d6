package org.cantonment.rules.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Function;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.SetText;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.RuleCheck;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Refusal;
import org.junit.jupiter.api.Test;

/** Checks of others that misbehave: each is named and shut out, and its neighbours are heard. */
class HostileGuestsTest {

    private static final Duration SHORT = Duration.ofMillis(60);
    /** A busy machine may give a check less time to work than it is allowed, until its time to wait is over. */
    private static final List<String> TOO_LONG = List.of("took longer than 60 ms.", "gave no answer within 180 ms.");
    private static final Duration LONG = Duration.ofMinutes(1);
    private static final Finding GOOD = Visitor.TOO_FEW.at(Id.of("Anna/4"), "Too few banks.");

    /** Asks a hostile check between two good ones. @return what it did, as the finding at its line says */
    private static String misdeed(Duration patience, Function<Question, List<Finding>> hostile) {
        AtomicInteger asked = new AtomicInteger();
        Guests guests = new Guests(patience);
        guests.enter(new Visitor("Before", question -> List.of(GOOD)), Visitor.from("org.good"));
        guests.enter(new Visitor("Hostile", question -> {
            asked.incrementAndGet();
            return hostile.apply(question);
        }), Visitor.from("org.bad"));
        guests.enter(new Visitor("Behind", question -> List.of(GOOD)), Visitor.from("org.good"));
        for (int i = 0; i < 3; i++) {
            assertEquals(List.of("check.before.too-few", "check.behind.too-few"),
                    Visitor.ask(guests, Visitor.use("Before"), Visitor.use("Hostile"), Visitor.use("Behind")).stream()
                            .map(Finding::code).toList());
        }
        assertTrue(asked.get() <= 2, "asked " + asked.get() + " times");
        Finding fault = guests.ofLines(List.of(Visitor.use("Hostile"))).get(0);
        assertEquals("check.fault", fault.code());
        assertEquals(Id.of("Season#9"), fault.at());
        String begin = "The check Hostile of plug-in org.bad 1.0.0 ";
        String end = " It is not asked again before the next start, and no list is judged by it.";
        assertTrue(fault.message().startsWith(begin) && fault.message().endsWith(end), fault.message());
        assertEquals(List.of(), guests.ofLines(List.of(Visitor.use("Before"), Visitor.use("Behind"))));
        return fault.message().substring(begin.length(), fault.message().length() - end.length());
    }

    private static String misdeed(Function<Question, List<Finding>> hostile) {
        return misdeed(LONG, hostile);
    }

    @Test
    void oneThatThrows() {
        assertEquals("failed: java.lang.IllegalStateException: no river.", misdeed(question -> {
            throw new IllegalStateException("no\nriver");
        }));
        assertEquals("called itself without end (StackOverflowError).", misdeed(HostileGuestsTest::endless));
        assertEquals("took more memory than there is (OutOfMemoryError).", misdeed(question -> {
            throw new OutOfMemoryError();
        }));
        assertEquals("does not fit this version of Cantonment: java.lang.AbstractMethodError: rank.", misdeed(question -> {
            throw new AbstractMethodError("rank");
        }));
        assertEquals("failed: java.lang.ThreadDeath.", misdeed(question -> {
            throw new ThreadDeath();
        }));
        assertEquals("failed, and failed again when it was asked how.", misdeed(question -> {
            throw new IllegalStateException() {
                private static final long serialVersionUID = 1L;

                @Override
                public String toString() {
                    throw new IllegalStateException();
                }
            };
        }));
    }

    private static List<Finding> endless(Question question) {
        return endless(question);
    }

    @Test
    void oneThatHandsBackNonsense() {
        Finding undeclared = new FindingKind("too-many", Severity.BREACH, "Many.").at(Id.of("Anna/4"), "Many.");
        Id entry = Id.of("Anna/4#1");
        Map<String, List<Finding>> answers = new LinkedHashMap<>();
        answers.put("handed back nothing at all.", null);
        answers.put("handed back an empty finding, or more than 1000.", Arrays.asList((Finding) null));
        answers.put("handed back a finding at Bela/4#1, which is no place in the list.",
                List.of(Visitor.TOO_FEW.at(Id.of("Bela/4#1"), "Too few.")));
        answers.put("handed back a finding with the code 'too-many', which it had not declared.", List.of(undeclared));
        answers.put("handed back a finding 'too-few' as NOTE, which it had declared as BREACH.",
                List.of(GOOD.withSeverity(Severity.NOTE)));
        answers.put("handed back a finding without a message, or with one of more than 2000 letters.",
                List.of(Visitor.TOO_FEW.at(entry, " ")));
        answers.put("handed back a mend without words or without a change.",
                List.of(GOOD.withMends(List.of(new Mend("Nothing", List.of())))));
        answers.put("handed back a mend that cannot be made in this list: RemoveEntry[entry=Bela/4#1].",
                List.of(GOOD.withMends(List.of(new Mend("Strike.", List.of(new RemoveEntry(Id.of("Bela/4#1"))))))));
        answers.put("handed back a mend that cannot be made in this list: SetText[place=Anna/4#1, text=Barge].",
                List.of(GOOD.withMends(List.of(new Mend("Write.", List.of(new SetText(entry, "Barge")))))));
        answers.forEach((words, answer) -> assertEquals(words, misdeed(question -> answer)));
    }

    @Test
    void oneThatLoopsForEver() {
        String words = misdeed(SHORT, question -> {
            long n = 0;
            while (question.list() != null) {
                n++;
            }
            return List.of();
        });
        assertTrue(TOO_LONG.contains(words), words);
    }

    @Test
    void oneThatWaitsForEverAndIsDeafToInterruption() {
        CountDownLatch never = new CountDownLatch(1);
        assertEquals("gave no answer within 180 ms.", misdeed(SHORT, question -> {
            while (true) {
                try {
                    never.await();
                } catch (InterruptedException deaf) {
                    continue;
                }
            }
        }));
    }

    @Test
    void oneThatLoopsInItsAnswer() {
        assertEquals("handed back an empty finding, or more than 1000.", misdeed(question -> new AbstractList<>() {
            @Override
            public Finding get(int index) {
                return GOOD;
            }

            @Override
            public int size() {
                return Integer.MAX_VALUE;
            }
        }));
    }

    @Test
    void oneThatEatsMemoryIsStoppedLongBeforeTheHeapIsFullAndGivesItBack() {
        AtomicReference<Thread> eater = new AtomicReference<>();
        long most = Math.min(256, Math.max(32, Runtime.getRuntime().maxMemory() / 8 >> 20));
        assertEquals("took more than " + most + " MB of memory for one answer.", misdeed(question -> {
            eater.set(Thread.currentThread());
            List<byte[]> eaten = new ArrayList<>();
            while (true) {
                eaten.add(new byte[1 << 16]);
            }
        }));
        assertFalse(eater.get().isAlive());
    }

    @Test
    void oneThatCatchesWhateverEndsItIsHeldForGood() {
        AtomicInteger turns = new AtomicInteger();
        AtomicReference<Thread> stubborn = new AtomicReference<>();
        String words = misdeed(SHORT, question -> {
            stubborn.set(Thread.currentThread());
            while (true) {
                try {
                    while (true) {
                        turns.incrementAndGet();
                    }
                } catch (Throwable swallowed) {
                    Thread.interrupted();
                }
            }
        });
        assertTrue(TOO_LONG.contains(words), words);
        int before = turns.get();
        long end = System.nanoTime() + Duration.ofMillis(50).toNanos();
        while (System.nanoTime() < end) {
            LockSupport.parkNanos(1_000_000);
        }
        assertEquals(before, turns.get(), "still working: " + stubborn.get().getState());
    }

    @Test
    void oneThatAnswersDifferentlyEachTime() {
        AtomicInteger asked = new AtomicInteger();
        assertEquals("answered the same question in two ways.", misdeed(
                question -> List.of(Visitor.TOO_FEW.at(Id.of("Anna/4"), "Question " + asked.incrementAndGet() + "."))));
    }

    @Test
    void oneThatChangesItsMindLater() {
        AtomicInteger asked = new AtomicInteger();
        Guests guests = new Guests(LONG);
        guests.enter(new Visitor("Fickle", question -> asked.incrementAndGet() < 5 ? List.of() : List.of(
                Visitor.TOO_FEW.at(Id.of("Anna/4"), "Question " + asked + "."))), Visitor.from("org.bad"));
        for (int i = 0; i < 8; i++) {
            Visitor.ask(guests, Visitor.use("Fickle"));
        }
        assertTrue(guests.known("Fickle").orElseThrow().shutOut().isPresent());
    }

    @Test
    void oneThatTriesToChangeWhatItWasGiven() {
        List<Function<Question, Object>> tries = List.of(question -> question.list().body().entries().remove(0),
                question -> question.entries().remove(question.entries().keySet().iterator().next()),
                question -> question.counts().put(Id.of("Lake/Barge"), 7L), question -> question.settings().remove("Banks"),
                question -> question.books().remove(0), question -> question.campaign().get().players().add(null));
        for (Function<Question, Object> change : tries) {
            assertEquals("tried to change what it was given.", misdeed(question -> {
                change.apply(question);
                return List.of();
            }));
        }
    }

    @Test
    void oneThatEndsItsOwnThreadOrLeavesItInterrupted() {
        assertEquals("failed: java.lang.ThreadDeath.", misdeed(question -> {
            try {
                Thread.class.getMethod("stop").invoke(Thread.currentThread());
            } catch (java.lang.reflect.InvocationTargetException stopped) {
                throw (ThreadDeath) stopped.getCause();
            } catch (ReflectiveOperationException gone) {
                throw new ThreadDeath();
            }
            return List.of();
        }));
        Guests guests = new Guests(LONG);
        guests.enter(new Visitor("Rude", question -> {
            Thread.currentThread().interrupt();
            return List.of(GOOD);
        }), Visitor.from("org.bad"));
        assertEquals(1, Visitor.ask(guests, Visitor.use("Rude")).size());
        assertEquals(1, Visitor.ask(guests, Visitor.use("Rude")).size());
    }

    /** Says something else of itself than a proper check. */
    private record Odd(String name, List<Parameter> parameters, List<FindingKind> findings) implements RuleCheck {

        @Override
        public String label() {
            return "Odd";
        }

        @Override
        public String about() {
            if (name.equals("Hanging")) {
                new Visitor("", null).answer().apply(null);
            }
            return name.equals("Silent") ? "" : "Odd.";
        }

        @Override
        public List<Finding> check(Question question) {
            return List.of();
        }
    }

    @Test
    void oneThatCannotSayWhoItIsIsNotLetIn() {
        List<FindingKind> kinds = List.of(Visitor.TOO_FEW);
        List<Parameter> none = List.of();
        Parameter share = Parameter.percent("Share", "Share", "How much.");
        Map<RuleCheck, String> odd = new LinkedHashMap<>();
        odd.put(new Odd("river", none, kinds), "has the name 'river'");
        odd.put(new Odd("Silent", none, kinds), "does not say what it checks");
        odd.put(new Odd("Hanging", none, kinds), "failed: java.lang.NullPointerException");
        odd.put(new Odd("Blank", null, kinds), "does not say which settings it takes");
        odd.put(new Odd("Blind", none, List.of()), "does not say which findings it may give");
        odd.put(new Odd("Twice", List.of(share, share), kinds), "has a parameter 'Share'; a parameter has a name of its own");
        odd.put(new Odd("Beyond", List.of(share.presetTo(101)), kinds), "has a parameter Share whose preset is out of its own bounds");
        odd.put(new Odd("Upside", List.of(share.within(9, 1)), kinds), "whose least value is above its greatest");
        odd.put(new Odd("Bounded", List.of(Parameter.yesNo("Share", "S", "S.").within(0, 1)), kinds), "with bounds");
        odd.put(new Odd("Coded", none, List.of(new FindingKind("Too few!", Severity.NOTE, "Few."))), "the code 'Too few!'");
        odd.forEach((check, words) -> {
            Guests guests = new Guests(LONG);
            guests.enter(check, Visitor.from("org.bad"));
            assertEquals(List.of(), guests.known());
            Refusal refusal = guests.refusals().get(0);
            assertTrue(refusal.why().startsWith("The check of class org.cantonment.rules.tests.HostileGuestsTest$Odd of"
                    + " plug-in org.bad 1.0.0 ") && refusal.why().contains(words), refusal.why());
            assertTrue(guests.ofLines(List.of(Visitor.use("Wanted"))).get(0).message().contains(words));
            guests.leave(check);
            assertEquals(List.of(), guests.refusals());
        });
    }

    @Test
    void oneThatIsShutOutStaysSoUntilItIsMendedOrLetIn() {
        Guests guests = new Guests(LONG);
        Visitor hostile = new Visitor("Hostile", question -> null);
        guests.enter(hostile, Visitor.from("org.bad"));
        Visitor.ask(guests, Visitor.use("Hostile"));
        guests.leave(hostile);
        guests.enter(hostile, Visitor.from("org.bad"));
        assertEquals(Optional.of("handed back nothing at all"), guests.known("Hostile").orElseThrow().shutOut());
        guests.forgive("Hostile");
        assertEquals(Optional.empty(), guests.known("Hostile").orElseThrow().shutOut());
        Visitor.ask(guests, Visitor.use("Hostile"));
        guests.leave(hostile);
        guests.enter(new Visitor("Hostile", question -> List.of(GOOD)), Visitor.from("org.mended"));
        assertEquals(1, Visitor.ask(guests, Visitor.use("Hostile")).size());
    }
}
