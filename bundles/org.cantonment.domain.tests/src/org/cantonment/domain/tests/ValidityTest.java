package org.cantonment.domain.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.EraOrder;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.InEras;
import org.cantonment.domain.common.InRounds;
import org.cantonment.domain.common.Moment;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.OfEra;
import org.cantonment.domain.common.OfRound;
import org.cantonment.domain.common.OfWeek;
import org.cantonment.domain.common.OnDate;
import org.cantonment.domain.common.Reach;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.common.When;
import org.junit.jupiter.api.Test;

class ValidityTest {

    private static final List<String> LINE = List.of("First", "Second", "Third");
    private static final EraOrder ERAS = (era, earlier) -> LINE.indexOf(era.text()) >= LINE.indexOf(earlier.text())
            && LINE.contains(earlier.text());

    private static Reach reach(Moment from, Moment to) {
        return new Reach(Optional.ofNullable(from), Optional.ofNullable(to));
    }

    private static boolean in(String era, When... when) {
        return Validity.of(when).covers(Occasion.in(Id.of(era)), ERAS);
    }

    @Test
    void erasReachFromOneToAnother() {
        OfEra second = new OfEra(Id.of("Second"));
        assertFalse(in("First", reach(second, null)));
        assertTrue(in("Second", reach(second, null)));
        assertTrue(in("Third", reach(second, null)));
        assertTrue(in("First", reach(null, second)));
        assertTrue(in("Second", reach(null, second)));
        assertFalse(in("Third", reach(null, second)));
        assertTrue(in("Second", new InEras(List.of(Id.of("First"), Id.of("Second")))));
        assertFalse(in("Third", new InEras(List.of(Id.of("First"), Id.of("Second")))));
    }

    @Test
    void bothEndsOfRoundsWeeksAndDaysAreIncluded() {
        for (int round = 1; round <= 5; round++) {
            boolean inside = round >= 2 && round <= 4;
            Occasion occasion = Occasion.UNKNOWN.withRound(round);
            assertEquals(inside, Validity.of(new InRounds(2, 4)).covers(occasion, ERAS));
            assertEquals(inside, Validity.of(reach(new OfRound(2), new OfRound(4))).covers(occasion, ERAS));
            Occasion week = new Occasion(Optional.empty(), OptionalInt.empty(), OptionalInt.of(round), Optional.empty());
            assertEquals(inside, Validity.of(reach(new OfWeek(2), new OfWeek(4))).covers(week, ERAS));
            Occasion day = Occasion.on(LocalDate.of(2031, 5, round));
            assertEquals(inside, Validity.of(reach(new OnDate(LocalDate.of(2031, 5, 2)),
                    new OnDate(LocalDate.of(2031, 5, 4)))).covers(day, ERAS));
        }
    }

    @Test
    void allConditionsMustHoldAndWhatIsUnknownDoesNot() {
        Validity both = Validity.of(new InRounds(1, 4), new InEras(List.of(Id.of("First"))));
        assertTrue(both.covers(Occasion.in(Id.of("First")).withRound(4), ERAS));
        assertFalse(both.covers(Occasion.in(Id.of("Second")).withRound(4), ERAS));
        assertFalse(both.covers(Occasion.in(Id.of("First")), ERAS));
        assertTrue(Validity.ALWAYS.covers(Occasion.UNKNOWN, ERAS));
    }
}
