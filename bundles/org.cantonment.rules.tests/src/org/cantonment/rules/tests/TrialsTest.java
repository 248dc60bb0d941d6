package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.ListOf.one;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.rules.Direction;
import org.cantonment.domain.rules.Expectation;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.rules.Trials;
import org.junit.jupiter.api.Test;

/** Examples that an organiser writes beside the rules. */
class TrialsTest {

    private static final Id LINE = Id.of("House/Trial#5");

    private static Expectation breach(String rule, String at) {
        return new Expectation(LINE, false, Optional.of(Severity.BREACH), Optional.of(Id.of(rule)),
                Optional.ofNullable(at).map(Id::of));
    }

    private static Expectation nothing() {
        return new Expectation(LINE, true, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static List<String> play(ListOf.Row row, Expectation... gives) {
        RuleSet base = new BookOf("Book").unit("Barge", strength(1, 12)).unit("Punt", strength(1, 5))
                .limit("Few", bound(Span.atMost(3), "Barge")).build();
        RuleSet house = new BookOf("House", "Book").change(Direction.TIGHTEN, "Book/Few",
                bound(Span.atMost(1), "Book/Barge")).example("Trial", new ListOf("House/Trial", "Book").add(row), gives)
                .build();
        return Trials.play(house, List.of(base, house), CancelToken.NEVER).stream().map(Finding::message).toList();
    }

    @Test
    void anExampleThatGivesWhatItSaysIsSilent() {
        assertEquals(List.of(), play(one("Barge"), nothing()));
        assertEquals(List.of(), play(some(2, "Barge"), breach("Book/Few", null)));
        assertEquals(List.of(), play(some(2, "Barge"), breach("Book/Few", "Book/Barge")));
    }

    @Test
    void anExampleThatGivesSomethingElseIsABreachOfItsBook() {
        assertEquals(List.of("Example Trial gives what it does not say: Few (House): at most 1 of Barge; the list has 2, "
                + "1 too many."), play(some(2, "Barge"), nothing()));
        assertEquals(List.of("Example Trial should give a breach of Few and does not."),
                play(one("Barge"), breach("Book/Few", null)));
        assertEquals(2, play(some(2, "Barge"), breach("Book/Few", "Book/Punt")).size());
    }
}
