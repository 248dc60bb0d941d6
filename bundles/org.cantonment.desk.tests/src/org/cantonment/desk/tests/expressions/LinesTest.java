package org.cantonment.desk.tests.expressions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a line is told at its place, by its code; nothing that can be typed brings the reader down. */
class LinesTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "always count of Tread                                   | 2:12 expression.type",
        "always points used is yes                               | 2:24 expression.type",
        "always yes is at least no                               | 2:12 expression.type",
        "always yes plus 1 is 2                                  | 2:12 expression.type",
        "always not count of Tread                               | 2:16 expression.type",
        "always count of Tread and yes                           | 2:12 expression.type",
        "always each Squad has count of Eyes                     | 2:27 expression.type",
        "always sum per Squad of yes is 1                        | 2:29 expression.type",
        "let A be yes;always A plus 1 is 2                       | 3:12 expression.type",
        "always yes and yes or no                                | 2:24 expression.open",
        "always 1 is 1 is 1                                      | 2:19 expression.open",
        "always its strength is 3                                | 2:12 expression.place",
        "let A be its strength;always A is 3                     | 3:12 expression.place",
        "always 3 with yes                                       | 2:14 expression.place",
        "always points of different Tread is 3                   | 2:22 form.word",
        "always strength of different Tread is 3                 | 2:12 expression.place",
        "always points of Tread kept is 3                        | 2:12 expression.place",
        "always count of formations gone is 3                    | 2:12 expression.place",
        "always count of Tread in the campaign before is 3       | 2:12 expression.place",
        "always points of Tread in the campaign is 3             | 2:12 expression.place",
        "always option Guns on Tread, Bike is 3                  | 2:12 expression.place",
        "always 1 divided by 0 is 1                              | 2:25 expression.zero",
        "always 1 divided by 0.4 rounded down is 1               | ",
        "always 1 divided by 2 minus 2 is 1                      | ",
        "let A be A plus 1                                       | 2:14 name.circle",
        "let A be B plus 1;let B be A plus 1                     | 2:14 name.circle, 3:14 name.circle",
        "always A is 1                                           | 2:12 name.unknown",
        "always count of Nobody is 1                             | 2:21 name.unknown",
        "always option Nothing on Tread is 1                     | 2:19 name.unknown",
        "always pieces of Nothing is 1                           | 2:22 name.unknown",
        "always the era is Never                                 | 2:23 name.unknown",
        "always 1 is -1                                          | 2:17 number.range",
        "always 1 is 1234567890123456                            | 2:17 number.range",
        "always                                                  | 2:10 form.short",
        "always count of                                         | 2:19 form.short",
        "always 1 plus                                           | 2:17 form.short",
        "always 1 1                                              | 2:14 form.word",
        "always plus 1                                           | 2:12 form.word",
        "always (1 is 1)                                         | 2:12 form.sign",
        "always 1 + 1 is 2                                       | 2:14 form.sign",
        "let A 3                                                 | 2:11 form.word",
        "dearer by 2 points                                      | 2:5 line.place",
        "when 3                                                  | 2:10 expression.type" })
    void isToldAtItsPlace(String lines, String said) {
        List<String> expected = said == null ? List.of() : List.of(said.split(", "));
        assertEquals(expected, Pond.limit(lines).bookFindings().stream().map(finding -> finding.split(":(?= )")[0]).toList());
    }

    @Test
    void aLineThatMeansNothingHarmsNoOther() {
        Pond pond = Pond.limit("always its strength is 3; always count of Tread is at least 2").list("Squad; . Tread of 3");
        assertEquals(1, pond.bookFindings().size());
        assertEquals(List.of("1 breach always.fails: Test (The Pond Book): count of Tread troop is 1 and should be at least 2."),
                pond.said());
    }

    @Test
    void aNameThatOnlyAnotherTimeKnowsIsToldAtThatTime() {
        Pond pond = Pond.limit("let A be 3 from Late; always count of Tread is A").list("Squad; . 3 Tread of 3");
        assertEquals(List.of("3:5 let.not-now: A stands for nothing at this time; the line is left out."),
                pond.in("Early", 1).bookFindings());
        assertEquals(List.of(), pond.in("Late", 1).bookFindings());
    }

    @Test
    void aNameOfTwoSortsIsToldWhereItIsTakenForTheOther() {
        Pond pond = Pond.limit("let A be 3; let A be yes from Late; always count of Tread is A");
        assertEquals(List.of("4:5 expression.type: A is a number for this line, but a yes or no as it is said for this time."),
                pond.in("Late", 1).bookFindings());
    }

    @ParameterizedTest
    @CsvSource({ "not,450", "1 plus,270", "1 is 1 and,170", "1 times,240", "each Squad has,125", "sum per Squad of,110",
        "any unit has,140", "greatest per unit of,90", "not,90000", "1 plus,90000" })
    void longLinesAreReadOrTold(String words, int times) {
        String start = (words + " ").repeat(times);
        String line = words.startsWith("sum") || words.startsWith("great") ? start + "1 is 1"
                : words.startsWith("1 is") || words.startsWith("not") || words.endsWith("has") ? start + "yes"
                        : start + "1 is 1";
        Pond pond = Pond.limit("always " + line).list("Squad; . 3 Tread of 3; . Bike of 2");
        assertTrue(pond.bookFindings().stream().allMatch(finding -> finding.contains("expression.deep")
                || finding.contains("form.long-line") || finding.contains("expression.type")), () -> pond.bookFindings().toString());
        assertTrue(pond.said().size() <= 1);
    }

    @Test
    void chainsOfNamesEnd() {
        for (boolean forwards : new boolean[] { true, false }) {
            StringBuilder lines = new StringBuilder();
            for (int i = 0; i < 3_000; i++) {
                int name = forwards ? i : 3_000 - i;
                lines.append("let A").append(name).append(" be A").append(name - 1).append(" plus A").append(name - 1)
                        .append(';');
            }
            lines.append(forwards ? "let A-1" : "let A0").append(" be 1; always A20 is at least 1");
            Pond pond = Pond.limit(lines.toString().replace("A-1", "Start")).list("Squad; . Tread of 3");
            List<String> found = pond.bookFindings();
            assertEquals(List.of("expression.deep"), found.stream().map(finding -> finding.replaceAll("^\\S+ |:.*", "")).toList());
            pond.said();
        }
    }

    @Test
    void whatDoublesWithEveryNameIsWorkedOutOnce() {
        StringBuilder lines = new StringBuilder("let A0 be count of Tread;");
        for (int i = 1; i <= 25; i++) {
            lines.append("let A").append(i).append(" be A").append(i - 1).append(" plus A").append(i - 1).append(';');
        }
        // Two to the 25th, worked out in 26 steps and not in as many as it says.
        assertTrue(Pond.limit(lines + "always A25 is 33554432").list("Squad; . Tread of 3").so());
    }
}
