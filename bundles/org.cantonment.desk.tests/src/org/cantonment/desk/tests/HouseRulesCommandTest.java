package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** House rules as the command line tells them, to the letter; invented, every sum worked out by hand. */
class HouseRulesCommandTest {
    private static final String ARMOUR = ":6:5: breach limit.at-most: Armour (Winter): at most 40 percent of points used on"
            + " Armour, that is 56 of 140; the list has 60 points, 4 too many.";
    private static final String TREADS = "Tread troops (Winter): at most 2 of Tread troop; the list has 3, 1 too many.";
    private static final String RELAXED = ":6:5: note limit.relaxed: Tread troops: relaxed by Charity weekend from what"
            + " stands in Winter (at most 2 of Tread troop); the list has 3.";

    @TempDir
    Path folder;

    @BeforeEach
    void copy() {
        Folders.copy("house-rules", folder);
    }

    private List<String> check(String list) {
        return Shell.in(folder, "check", "lists/" + list + ".list").lines();
    }

    @Test
    void roundTwoBreaksBothRulesOfTheWinter() {
        assertEquals(List.of("lists/quill-2.list" + ARMOUR, "lists/quill-2.list:6:5: breach limit.at-most: " + TREADS),
                check("quill-2"));
        assertEquals(List.of("lists/brack-2.list" + ARMOUR,
                "lists/brack-2.list:6:5: note limit.at-most: " + TREADS + " Excused by Ombra: Birthday."), check("brack-2"));
        assertEquals(List.of(), check("nib-2"));
    }

    @Test
    void roundThreeRelaxesOneOfThem() {
        assertEquals(List.of("lists/quill-3.list" + ARMOUR, "lists/quill-3.list" + RELAXED), check("quill-3"));
        assertEquals(List.of("lists/nib-3.list" + RELAXED), check("nib-3"));
    }

    @Test
    void roundFiveIsThePublishedBookAlone() {
        assertEquals(List.of(), check("quill-5"));
        assertEquals(0, Shell.in(folder, "check", "lists/quill-5.list").code());
    }

    @Test
    void whatCuresBothComesFirstAndTheOrganisersWordLast() {
        JsonArray findings = JsonParser.parseString(Shell.in(folder, "check", "--json", "lists/quill-2.list").out())
                .getAsJsonObject().getAsJsonArray("findings");
        assertEquals(2, findings.size());
        for (JsonElement finding : findings) {
            JsonArray mends = finding.getAsJsonObject().getAsJsonArray("mends");
            JsonObject first = mends.get(0).getAsJsonObject();
            assertEquals("Strike Tread troop (mends 2 findings).", first.get("label").getAsString());
            JsonObject last = mends.get(mends.size() - 1).getAsJsonObject();
            assertEquals("season.campaign", last.get("file").getAsString());
            assertTrue(last.get("label").getAsString().startsWith("Excuse Quill from "), last::toString);
            assertEquals("Winter", finding.getAsJsonObject().getAsJsonObject("rule").get("layer").getAsString());
            for (int i = 0; i < mends.size() - 1; i++) {
                assertTrue(!mends.get(i).getAsJsonObject().has("file"), mends::toString);
            }
        }
    }

    @Test
    void theMendOfRoundThreeIsTenPointsOfFoot() {
        JsonObject finding = JsonParser.parseString(Shell.in(folder, "check", "--json", "lists/quill-3.list").out())
                .getAsJsonObject().getAsJsonArray("findings").get(0).getAsJsonObject();
        assertEquals("Take Foot at strength 90, 90 points each.", finding.getAsJsonArray("mends").get(0).getAsJsonObject()
                .get("label").getAsString());
    }
}
