package org.cantonment.notation.tests.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.domain.finding.ReplaceUnit;
import org.cantonment.domain.finding.SetCount;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.finding.SetStrength;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.finding.Unpin;
import org.cantonment.notation.Document;
import org.cantonment.notation.text.TextChange;
import org.cantonment.notation.text.TextFinding;
import org.junit.jupiter.api.Test;

/** What an engine would change in a list becomes a change of the text, and of nothing else in it. */
class MendWriterTest {

    private static final String RULES = """
            rules Lake
            unit Gun-Troop
              . strength 2 for 14 points
              . option Mast for 1 point
              . option Long-Guns, at most 4, for 1 point
            unit Tender
              . strength 1 for 3 points
            formation Squadron
              . billet Line 1 to 3 of Gun-Troop
            """;
    private static final String LIST = """
            list Mine under Lake
            Squadron   # the first
              . Gun-Troop of 2, Mast
              . 2 Gun-Troop
            support
              . Tender
            """;

    private final Desk desk = new Desk();
    private final Document list;

    MendWriterTest() {
        desk.put("lake.rules", RULES);
        list = desk.put("mine.list", LIST);
    }

    private String after(Action action) {
        Finding finding = new Finding("x", Severity.BREACH, Id.of("Mine#2"), Optional.empty(), "x",
                List.of(new Mend("mend", List.of(action))));
        TextFinding located = list.locate(finding);
        assertEquals("3:5", Desk.where(list, located));
        return TextChange.apply(LIST, located.mends().get(0).changes());
    }

    @Test
    void anEntryGoesWithItsLine() {
        assertEquals(LIST.replace("  . Gun-Troop of 2, Mast\n", ""), after(new RemoveEntry(Id.of("Mine#2"))));
    }

    @Test
    void aFormationGoesWithAllThatBelongsToIt() {
        assertEquals("list Mine under Lake\nsupport\n  . Tender\n", after(new RemoveEntry(Id.of("Mine#1"))));
    }

    @Test
    void whatIsAddedMayHavePartsAndStandsInOrder() {
        Id squadron = Id.of("Mine+Lake/Squadron");
        Mend mend = new Mend("mend", List.of(new RemoveEntry(Id.of("Mine#1")),
                new AddUnit(Id.of("Mine"), false, Optional.empty(), Id.of("Lake/Squadron"), OptionalInt.empty(), 1),
                new AddUnit(squadron, false, Optional.of("Line"), Id.of("Lake/Gun-Troop"), OptionalInt.of(2), 2),
                new AddUnit(squadron, true, Optional.empty(), Id.of("Lake/Tender"), OptionalInt.empty(), 1),
                new AddUnit(squadron, true, Optional.empty(), Id.of("Lake/Gun-Troop"), OptionalInt.of(2), 1)));
        assertEquals("""
                list Mine under Lake
                support
                  . Tender
                Squadron
                  . Line: 2 Gun-Troop of 2
                  . support
                    .. Tender
                    .. Gun-Troop of 2
                """, TextChange.apply(LIST, list.write(mend).changes()));
    }

    @Test
    void whatIsAddedOrReplacedIsWrittenWithItsOptions() {
        Id squadron = Id.of("Mine+Lake/Squadron");
        Mend mend = new Mend("mend", List.of(
                new ReplaceUnit(Id.of("Mine#2"), Id.of("Lake/Gun-Troop"), OptionalInt.of(3)),
                new SetOption(Id.of("Mine#2"), "Long-Guns", 2),
                new AddUnit(Id.of("Mine"), false, Optional.empty(), Id.of("Lake/Squadron"), OptionalInt.empty(), 1),
                new AddUnit(squadron, false, Optional.empty(), Id.of("Lake/Gun-Troop"), OptionalInt.of(2), 1),
                new SetOption(Id.of("Mine+Lake/Squadron+Lake/Gun-Troop-2"), "Mast", 1),
                new AddUnit(squadron, false, Optional.empty(), Id.of("Lake/Gun-Troop"), OptionalInt.of(2), 1),
                new SetOption(Id.of("Mine+Lake/Squadron+Lake/Gun-Troop-2/2"), "Long-Guns", 4)));
        assertEquals("""
                list Mine under Lake
                Squadron   # the first
                  . Gun-Troop of 3, 2 Long-Guns
                  . 2 Gun-Troop
                support
                  . Tender
                Squadron
                  . Gun-Troop of 2, Mast
                  . Gun-Troop of 2, 4 Long-Guns
                """, TextChange.apply(LIST, list.write(mend).changes()));
    }

    @Test
    void whatIsAddedStandsInWhatItBelongsToWhereAllEndsAtOnce() {
        Document other = desk.put("open.list", "list Open under Lake\nSquadron\n  . Gun-Troop");
        Mend mend = new Mend("mend", List.of(
                new AddUnit(Id.of("Open"), true, Optional.empty(), Id.of("Lake/Tender"), OptionalInt.of(1), 1),
                new AddUnit(Id.of("Open"), false, Optional.empty(), Id.of("Lake/Squadron"), OptionalInt.empty(), 1),
                new AddUnit(Id.of("Open+Lake/Squadron"), false, Optional.empty(), Id.of("Lake/Gun-Troop"),
                        OptionalInt.of(2), 1),
                new AddUnit(Id.of("Open#1"), false, Optional.empty(), Id.of("Lake/Gun-Troop"), OptionalInt.of(2), 2)));
        assertEquals("""
                list Open under Lake
                Squadron
                  . Gun-Troop
                  . 2 Gun-Troop of 2
                Squadron
                  . Gun-Troop of 2
                support
                  . Tender of 1
                """, TextChange.apply(other.text(), other.write(mend).changes()));
    }

    @Test
    void aCountIsWrittenOrPutIn() {
        assertEquals(LIST.replace("2 Gun-Troop\n", "3 Gun-Troop\n"), after(new SetCount(Id.of("Mine#3"), 3)));
        assertEquals(LIST.replace(". Gun-Troop of", ". 4 Gun-Troop of"), after(new SetCount(Id.of("Mine#2"), 4)));
    }

    @Test
    void aStrengthIsWrittenOrPutIn() {
        assertEquals(LIST.replace("of 2,", "of 3,"), after(new SetStrength(Id.of("Mine#2"), 3)));
        assertEquals(LIST.replace("2 Gun-Troop\n", "2 Gun-Troop of 3\n"), after(new SetStrength(Id.of("Mine#3"), 3)));
    }

    @Test
    void anOptionComesAndGoes() {
        assertEquals(LIST.replace(", Mast", ", Mast, 2 Long-Guns"), after(new SetOption(Id.of("Mine#2"), "Long-Guns", 2)));
        assertEquals(LIST.replace(", Mast", ""), after(new SetOption(Id.of("Mine#2"), "Mast", 0)));
    }

    @Test
    void aBilletIsLeftOutWithItsColon() {
        String pinned = """
                list Pinned under Lake
                Squadron
                  . Line: 2 Gun-Troop of 2
                  . Line: Gun-Troop
                  . Gun-Troop
                """;
        Document other = desk.put("pinned.list", pinned);
        assertEquals(pinned.replace("Line: 2", "2"), without(other, "Pinned#2"));
        assertEquals(pinned.replace("Line: Gun", "Gun"), without(other, "Pinned#3"));
        assertEquals(pinned, without(other, "Pinned#4"));
    }

    private static String without(Document other, String entry) {
        Mend mend = new Mend("mend", List.of(new Unpin(Id.of(entry))));
        return TextChange.apply(other.text(), other.locate(new Finding("x", Severity.BREACH, Id.of(entry),
                Optional.empty(), "x", List.of(mend))).mends().get(0).changes());
    }

    @Test
    void aUnitIsReplacedWithItsStrengthAndOptions() {
        assertEquals(LIST.replace("Gun-Troop of 2, Mast", "Tender of 1"),
                after(new ReplaceUnit(Id.of("Mine#2"), Id.of("Lake/Tender"), OptionalInt.of(1))));
    }

    @Test
    void aUnitIsAddedBelowTheLastOfItsFormation() {
        AddUnit add = new AddUnit(Id.of("Mine#1"), false, Optional.empty(), Id.of("Lake/Gun-Troop"), OptionalInt.of(2), 1);
        assertEquals(LIST.replace("  . 2 Gun-Troop\n", "  . 2 Gun-Troop\n  . Gun-Troop of 2\n"), after(add));
    }

    @Test
    void aUnitIsAddedToTheSupports() {
        AddUnit add = new AddUnit(Id.of("Mine"), true, Optional.empty(), Id.of("Lake/Tender"), OptionalInt.empty(), 2);
        assertEquals(LIST + "  . 2 Tender\n", after(add));
    }
}
