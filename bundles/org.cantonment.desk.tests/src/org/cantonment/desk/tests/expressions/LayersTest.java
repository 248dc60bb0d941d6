package org.cantonment.desk.tests.expressions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Layers and times on lines with expressions: what replaces what, who must say that it loosens, and what is told. */
class LayersTest {

    private static final String LIST = "Squad; . 4 Tread of 3; . 2 Bike of 2";

    private static Pond book(String lines, String layer) {
        return Pond.limit(lines).layer("rules Winter \"Winter rules\" over Pond\n" + layer).list(LIST);
    }

    private static List<String> codes(List<String> findings) {
        return findings.stream().map(finding -> finding.replaceAll("^(\\d+:)?\\d+ ((breach|caution|note) )?|: .*", "")).toList();
    }

    @Test
    void aStricterLineReplacesTheOneBelow() {
        Pond pond = book("always count of Eyes is at least 1", "tighten Test\n  . always count of Eyes is at least 3\n");
        assertEquals(List.of(), pond.bookFindings());
        assertEquals(List.of("1 breach always.fails: Test (Winter rules): count of Eyes is 2 and should be at least 3."),
                pond.said());
    }

    @Test
    void aLooserLineMustSaySo() {
        String below = "always count of Eyes is at least 3";
        Pond unsaid = book(below, "change Test\n  . always count of Eyes is at least 1\n");
        assertEquals(List.of("layer.relaxes-unsaid"), codes(unsaid.bookFindings()));
        assertEquals(List.of("1 breach always.fails: Test (The Pond Book): count of Eyes is 2 and should be at least 3."),
                unsaid.said());
        Pond wrong = book(below, "tighten Test\n  . always count of Eyes is at least 1\n");
        assertEquals(List.of("layer.direction"), codes(wrong.bookFindings()));
        assertEquals(List.of("always.fails"), codes(wrong.said()));
        Pond loosened = book(below, "loosen Test\n  . always count of Eyes is at least 1\n");
        assertEquals(List.of(), loosened.bookFindings());
        assertEquals(List.of("1 note limit.relaxed: Test: relaxed by Winter rules from what stands in The Pond Book (count of Eyes is "
                + "at least 3)."), loosened.said());
        Pond slip = book(below, "loosen Test\n  . always count of Eyes is at least 4\n");
        assertEquals(List.of("layer.direction"), codes(slip.bookFindings()));
        assertEquals(List.of("1 breach always.fails: Test (Winter rules): count of Eyes is 2 and should be at least 4."),
                slip.said());
    }

    @Test
    void ofTwoLinesOfWhichNobodyCanTellBothStand() {
        Pond pond = book("always count of Eyes is at least 3",
                "change Test\n  . always count of Eyes is at least count of Armour\n");
        assertEquals(List.of(), pond.bookFindings());
        assertEquals(List.of("always.fails", "always.fails"), codes(pond.said()));
    }

    @Test
    void whatLoosensNothingIsTold() {
        Pond pond = book("always count of Eyes is at least 3", "loosen Test\n  . always count of Armour is at most 9\n");
        assertEquals(List.of("layer.loosens-nothing"), codes(pond.bookFindings()));
        assertEquals(List.of("always.fails"), codes(pond.said()));
    }

    @Test
    void twoLayersThatCollideAreToldAndTheStrictestStands() {
        Pond pond = book("always count of Eyes is at least 1", "change Test\n  . always count of Eyes is at least 5\n")
                .layer("rules Lamps \"Lamp rules\" over Pond\nchange Test\n  . always count of Eyes is at least 3\n");
        assertEquals(List.of("layer.collide"), codes(pond.bookFindings()));
        assertEquals(List.of("1 breach always.fails: Test (Winter rules): count of Eyes is 2 and should be at least 5."),
                pond.said());
    }

    @Test
    void aLayerGivesANameToSomethingElse() {
        Pond pond = book("let Wanted be 1; always count of Eyes is at least Wanted", "tighten Test\n  . let Wanted be 4\n");
        assertEquals(List.of(), pond.bookFindings());
        assertEquals(List.of("1 breach always.fails: Test (The Pond Book): count of Eyes is 2 and should be at least 4 (Wanted); "
                + "Wanted is 4."), pond.said());
    }

    @Test
    void oneMoreConditionLoosens() {
        String below = "always count of Eyes is at least 3";
        Pond unsaid = book(below, "change Test\n  . when count of Armour is more than 9\n");
        assertEquals(List.of("layer.relaxes-unsaid"), codes(unsaid.bookFindings()));
        assertEquals(List.of("always.fails"), codes(unsaid.said()));
        Pond said = book(below, "loosen Test\n  . when count of Armour is more than 9\n");
        assertEquals(List.of(), said.bookFindings());
        assertEquals(List.of(), said.said());
    }

    @Test
    void aLiftTakesThemAway() {
        assertEquals(List.of(), book("always no", "lift Test\n").said());
        assertEquals(List.of("always.fails"), codes(book("always no", "lift Test in rounds 7 to 9\n").in("Late", 2).said()));
    }

    @Test
    void erasAndRoundsSayWhichLineHolds() {
        Pond pond = Pond.limit("always count of Eyes is at least 1; always count of Eyes is at least 3 from Late;"
                + "always count of Armour is at most 3 in rounds 2 to 4").list(LIST);
        assertEquals(List.of(), pond.in("Early", 1).bookFindings());
        assertEquals(List.of(), pond.in("Early", 1).said());
        assertEquals(List.of("always.fails"), codes(pond.in("Late", 1).said()));
        assertEquals(List.of("always.fails", "always.fails"), codes(pond.in("Late", 2).said()));
    }

    @Test
    void aCircleThatOnlyALayerClosesIsTold() {
        Pond pond = book("let A be B plus 1; let B be 1; always A is at least 9", "change Test\n  . let B be A plus 1\n");
        assertEquals(List.of("name.circle"), codes(pond.bookFindings()));
        assertEquals(List.of(), pond.said());
    }

    @Test
    void anExampleOfTheRulesPlaysThem() {
        String example = "example Blind\n  . Squad\n    .. 4 Tread of 3\n  . gives breach Test at Squad\n";
        Pond pond = Pond.with("limit Test\n  . always each Squad has count of Eyes is at least 1\n" + example);
        assertEquals(List.of(), pond.bookFindings());
        assertEquals(List.of(), pond.played());
        assertEquals(List.of("example.differs"), Pond.with("limit Test\n  . always each Squad has count of Eyes is at least 0\n"
                + example).played());
    }

    @Test
    void aNameThatALayerChangesLoosensOnlyIfItSaysSo() {
        String below = "let Wanted be 3; always count of Eyes is at least Wanted";
        Pond unsaid = book(below, "change Test\n  . let Wanted be 1\n");
        assertEquals(List.of(), unsaid.bookFindings());
        assertEquals(List.of("1 breach always.fails: Test (The Pond Book, with Wanted as it was before Winter rules, which does "
                + "not say that it loosens): count of Eyes is 2 and should be at least 3 (Wanted); Wanted is 3."), unsaid.said());
        assertEquals(List.of(), book(below, "loosen Test\n  . let Wanted be 1\n").said());
        // Both fail: that is told once, as it stands.
        assertEquals(List.of("1 breach always.fails: Test (The Pond Book): count of Eyes is 2 and should be at least 4 (Wanted); Wanted is 4."),
                book(below, "change Test\n  . let Wanted be 4\n").said());
        // What a layer adds itself leans on what it says itself.
        assertEquals(List.of(), book("let Wanted be 3", "change Test\n  . let Wanted be 1\n"
                + "  . always count of Eyes is at least Wanted\n").said());
    }

    @Test
    void aNameInAConditionThatALayerChangesLoosensOnlyIfItSaysSo() {
        String below = "let Many be 4; when count of Armour is at least Many; always count of Eyes is at least 3";
        assertEquals(List.of("always.fails"), codes(book(below, "change Test\n  . let Many be 9\n").said()));
        assertEquals(List.of(), book(below, "loosen Test\n  . let Many be 9\n").said());
        assertEquals(List.of("always.fails"), codes(book("let Many be 9; when count of Armour is at least Many;"
                + " always count of Eyes is at least 3", "change Test\n  . let Many be 4\n").said()));
    }
}
