package org.cantonment.notation.tests.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.notation.Document;
import org.cantonment.notation.text.TextChange;
import org.cantonment.notation.text.TextFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each slip is one finding, at its own place, and harms no other line. */
class FormFindingsTest {

    private static final String BEFORE = """
            rules Lake
            kind Guns
            unit Gun-Troop
              . is Guns
            """;
    private static final String CARD = """
            formation Squadron
              . billet Line 1 to 3 of Gun-Troop
            """;
    private static final String AFTER = "  . strength 2 for 14 points\n" + CARD;

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
              . strenth 4 for 20 points             | 5:5 breach form.line
              . strength 4 for 20 pounds            | 5:23 breach form.word
              . strength 4 for                      | 5:18 breach form.short
              . strength 4                          | 5:14 breach form.short
              . strength for 20 points              | 5:14 breach form.word
              . strength 4 for 2,5 points           | 5:21 breach form.word
              . strength -1 for 20 points           | 5:14 breach number.range
              . strength 0 for 20 points            | 5:14 breach number.range
              . strength 4 to 3 for 20 points       | 5:19 breach number.range
              . strength 4 for 99999999999 points   | 5:20 breach number.range
              . strength 2147483648 for 1 points    | 5:14 breach number.range
              . option Mast "High                   | 5:17 breach form.quote
              . is Guns {                           | 5:13 breach form.sign
              . is Guns,                            | 5:12 breach form.short
              . is Guns Guns                        | 5:13 breach form.word
              . is guns                             | 5:8 note name.capital
              . is Gums                             | 5:8 breach name.unknown
              ... is Guns                           | 5:3 breach form.dots
              . price 3.00 EUR                      | 5:5 breach form.line
              . billet Line 1 of Gun-Troop          | 5:12 breach line.place
            untit Rifles                            | 5:1 breach form.line
            unit Gun-Troop                          | 5:6 breach name.twice
            kind Boats in Boats                     | 5:15 breach name.circle
            era A after A                           | 5:13 breach name.circle
            unit                                    | 5:4 breach form.short
            .                                       | 5:1 breach form.short
            """)
    void oneFindingAtItsPlace(String line, String expected) {
        boolean heading = Character.isLetter(line.charAt(0));
        String indented = heading || line.equals(".") ? line : "  " + line;
        Document document = new Desk().put("lake.rules", BEFORE + indented + '\n' + (heading ? CARD : AFTER));
        List<String> found = Desk.findings(document);
        assertEquals(List.of(expected), found, () -> document.findings().toString());
    }

    @Test
    void theMendOfAMistypedWordIsTheWord() {
        Document document = new Desk().put("lake.rules", BEFORE + "  . strenth 4 for 20 points\n" + AFTER);
        TextFinding finding = document.findings().get(0);
        assertTrue(finding.message().contains("did you mean 'strength'?"), finding.message());
        String mended = TextChange.apply(document.text(), finding.mends().get(0).changes());
        assertEquals(BEFORE + "  . strength 4 for 20 points\n" + AFTER, mended);
    }

    @Test
    void aFileThatHoldsNothingSaysWhatItCouldHold() {
        for (String text : List.of("", "\n\n", "# only a remark\n", "\uFEFF", "   ")) {
            Document document = new Desk().put("a.list", text);
            assertEquals(List.of("form.empty"), document.findings().stream().map(TextFinding::code).toList(), text);
        }
    }

    @Test
    void lineEndsAndByteOrderMarksDoNotMatter() {
        for (String text : List.of(BEFORE + AFTER, ("\uFEFF" + BEFORE + AFTER).replace("\n", "\r\n"),
                (BEFORE + AFTER).replace('\n', '\r'), (BEFORE + AFTER).stripTrailing())) {
            assertEquals(List.of(), Desk.findings(new Desk().put("lake.rules", text)), text);
        }
    }

    @Test
    void aFormationInsideItselfIsFoundWhateverTheWayRound() {
        Document document = new Desk().put("lake.rules", """
                rules Lake
                formation One
                  . billet Line 1 of Two
                formation Two
                  . billet Line 1 of One
                """);
        assertEquals(List.of("2:11 breach name.circle", "4:11 breach name.circle"), Desk.findings(document));
    }

    @Test
    void aRuleSetOverItselfIsFound() {
        Document document = new Desk().put("lake.rules", "rules Lake over Lake\n");
        assertEquals(List.of("1:17 breach name.circle"), Desk.findings(document));
    }

    @Test
    void namesOfAnyScriptAreNamesAndMixedOnesArePointedOut() {
        Document document = new Desk().put("c.campaign", """
                campaign Tuesday
                player דורה "דורה"
                player Ωμέγα
                player Омbra
                דורה beat Ωμέγα
                """);
        assertEquals(List.of("4:8 caution name.scripts"), Desk.findings(document));
    }

    @Test
    void aLineBeyondAllMeasureIsOneFinding() {
        String text = "list X\nFoo, " + "A ".repeat(2_000_000) + "\nBar\n";
        Document document = new Desk().put("a.list", text);
        assertEquals(List.of(2, 3), document.findings().stream()
                .map(finding -> document.lines().lineOf(finding.offset()) + 1).toList());
    }

    @Test
    void twoNamesAndOneResultAreAWholeCampaign() {
        Document document = new Desk().put("c.campaign", "campaign Tuesday\nplayer Ombra\nplayer Brack\nOmbra beat Brack\n");
        assertEquals(List.of(), Desk.findings(document));
    }
}
