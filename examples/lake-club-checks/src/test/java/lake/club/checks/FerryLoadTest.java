package lake.club.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Question;
import org.cantonment.rules.api.QuestionBuilder;
import org.junit.jupiter.api.Test;

/** The check by itself: no workbench, no OSGi, a question made by hand. */
class FerryLoadTest {

    private static final Id PUNTS = Id.of("Ombra", "4#2");
    private static final Id SCOUTS = Id.of("Ombra", "4#3");

    private final FerryLoad check = new FerryLoad();

    @Test
    void exactlyTheShareIsLightEnough() {
        assertEquals(List.of(), check.check(punts(1, 40, 100).ask()));
    }

    @Test
    void oneEntryTooHeavyStaysAshore() {
        Finding found = only(check.check(punts(1, 41, 100).ask()));
        assertEquals("too-heavy", found.code());
        assertEquals(Severity.BREACH, found.severity());
        assertEquals(PUNTS, found.at());
        assertEquals("Gun-Punts takes 41 of the list's 100 points; at most 40 percent may be in one entry.",
                found.message());
        assertEquals(List.of(new RemoveEntry(PUNTS)), found.mends().get(0).actions());
    }

    /** 5 at 16 are 80 of 120 points. Of 2 at 16 and the other 40: 32 of 72 is 44 percent; of 1 at 16: 16 of 56 is 29. */
    @Test
    void ofManyAlikeTheMendKeepsWhatIsLightEnough() {
        Finding found = only(check.check(punts(5, 80, 120).ask()));
        assertEquals(List.of(new SetCount(PUNTS, 1)), found.mends().get(0).actions());
        assertFalse(FerryLoad.tooHeavy(16, 56, BigDecimal.valueOf(40)));
        assertTrue(FerryLoad.tooHeavy(32, 72, BigDecimal.valueOf(40)));
    }

    @Test
    void theSettingCounts() {
        QuestionBuilder question = punts(1, 60, 100);
        assertEquals(1, check.check(question.ask()).size());
        assertEquals(List.of(), check.check(question.with(FerryLoad.SHARE,
                new NumberValue(BigDecimal.valueOf(60), true)).ask()));
    }

    @Test
    void whatCostsNothingIsNotWeighed() {
        Finding found = only(check.check(punts(1, 0, 0).ask()));
        assertEquals("not-weighed", found.code());
        assertEquals(Severity.NOTE, found.severity());
    }

    @Test
    void whatItFindsIsDeclared() {
        assertEquals(List.of("too-heavy", "not-weighed"), check.findings().stream().map(FindingKind::code).toList());
    }

    private static Finding only(List<Finding> found) {
        assertEquals(1, found.size(), () -> found.toString());
        return found.get(0);
    }

    /** A list of some punts at these points, and scouts for the rest. */
    private QuestionBuilder punts(int count, long points, long used) {
        Body body = new Body(List.of(entry(PUNTS, "Gun-Punts", count), entry(SCOUTS, "Scouts", 1)), List.of());
        ForceList list = new ForceList(Id.of("Ombra", "4"), Optional.empty(), OptionalInt.of(4), List.of(),
                Optional.empty(), OptionalInt.empty(), body, List.of(), List.of(), List.of(), List.of());
        return Question.about(list).costs(used, Map.of(PUNTS, points)).presets(check);
    }

    private static Entry entry(Id id, String unit, int count) {
        return new Entry(id, Optional.empty(), count, Id.of("Lake-Book", unit), OptionalInt.empty(), List.of(),
                Optional.empty(), "", Optional.empty(), Body.EMPTY, List.of());
    }
}
