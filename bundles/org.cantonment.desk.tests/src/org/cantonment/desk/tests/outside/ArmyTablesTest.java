package org.cantonment.desk.tests.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

/** Strengths that the United States Army printed; a point is a man. */
class ArmyTablesTest {

    /** Army Ground Forces Study No. 8, chapters 11 and 12 (public domain). */
    @Test
    void theCutOfTheRifleCompanySaves162MenForEachDivision() {
        Books study = Books.of("army-study");
        Map<String, Long> heads = study.points();
        assertEquals(Map.of("company", 192L, "before", 27 * 198L, "after", 5184L, "before-to-5184", 27 * 198L,
                "of-26", 26 * 192L, "of-28", 28 * 192L, "old-strength", 5184L), heads);
        assertEquals(162, heads.get("before") - heads.get("after"));
        for (String legal : List.of("company", "before", "after")) {
            assertEquals(List.of(), study.said(legal));
        }
        assertEquals(List.of("The list uses 5346 points of 5184: 162 too many."), study.sentences("before-to-5184"));
        assertEquals(List.of("before-to-5184.list:2 [list Before-To-5184 under Study-Eight in Before-Cut to 5184 "
                + "points] breach points.over"), study.said("before-to-5184"));
        assertEquals(List.of(), study.saidOfBooks());
    }

    /** The same study: 27 companies, and no other strength after the cut. */
    @Test
    void aCompanyMoreOrLessOrTheOldStrengthIsNamed() {
        Books study = Books.of("army-study");
        String companies = " by study.rules:19 [billet Companies 27 of Rifle-Company]";
        assertEquals(List.of("of-28.list:4 [28 Rifle-Company] breach billet.full" + companies), study.said("of-28"));
        assertEquals(List.of("of-26.list:3 [Division-Rifles] breach billet.short" + companies), study.said("of-26"));
        assertEquals(List.of("Add Rifle company, 192 points."), study.mends("of-26", 0));
        assertEquals(List.of("old-strength.list:6 [Rest-Of-Company of 90] breach strength.not-offered by "
                + "study.rules:13 [strength 84 for 84 points from After-Cut]"), study.said("old-strength"));
    }

    /** Table of Organization 7-17, 26 February 1944: from memory, about 90 % sure. */
    @Test
    void theRifleCompanyIs193WithSixOfficers() {
        Books table = Books.of("rifle-company");
        assertEquals(Map.of("full", 35 + 3 * 41 + 35L, "two-platoons", 193 - 41L, "four-platoons", 193 + 41L),
                table.points());
        assertEquals(193, table.points().get("full"));
        assertEquals(List.of(), table.said("full"));
        assertEquals(List.of(), table.saidOfBooks());
    }

    /** The same table: three rifle platoons of 41, one of them an officer; from memory, about 90 % sure. */
    @Test
    void aPlatoonMoreOrLessIsNamedAtItsBilletAndInItsRanks() {
        Books table = Books.of("rifle-company");
        String platoons = " by table.rules:34 [billet Rifles 3 of Rifle-Platoon]";
        String officers = " by table.rules:37 [exactly 6 points on Officers in each Rifle-Company]";
        String men = " by table.rules:39 [exactly 187 points on Enlisted in each Rifle-Company]";
        String two = "two-platoons.list:3 [Rifle-Company] breach ";
        assertEquals(List.of(two + "billet.short" + platoons, two + "limit.at-least" + officers,
                two + "limit.at-least" + men), table.said("two-platoons"));
        String four = "four-platoons.list:";
        assertEquals(List.of(four + "2 [list Four-Platoons under Table-7-17 to 193 points] breach points.over",
                four + "7 [4 Rifle-Platoon] breach billet.full" + platoons,
                four + "9 [Platoon-Men] breach limit.at-most" + men,
                four + "11 [Platoon-Leader] breach limit.at-most" + officers), table.said("four-platoons"));
        List<String> sentences = table.sentences("four-platoons");
        assertEquals("The list uses 234 points of 193: 41 too many.", sentences.get(0));
        assertEquals("Enlisted men (Rifle company): exactly 187 points on Enlisted men; in Rifle company: 227 points, "
                + "40 too many.", sentences.get(2));
        assertEquals("Officers (Rifle company): exactly 6 points on Officers; in Rifle company: 7 points, 1 too many.",
                sentences.get(3));
    }
}
