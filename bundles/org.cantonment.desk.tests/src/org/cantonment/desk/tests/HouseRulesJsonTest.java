package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/**
 * A published book, a winter layer and a weekend that relaxes it, as {@code check --json} tells them; invented, every sum
 * worked out by hand. Each best mend is done, and the list is checked anew.
 */
class HouseRulesJsonTest {
    private static final String ARMOUR = "breach Armour (Winter): at most 40 percent of points used on Armour, that is 56 of"
            + " 140; the list has 60 points, 4 too many.";
    private static final String TREADS = "Tread troops (Winter): at most 2 of Tread troop; the list has 3, 1 too many.";
    private static final String RELAXED = "note Tread troops: relaxed by Charity weekend from what stands in Winter (at most 2"
            + " of Tread troop); the list has 3.";

    @TempDir
    Path folder;

    private JsonObject check(String path) {
        return JsonParser.parseString(Shell.in(folder, "check", "--json", path).out()).getAsJsonObject();
    }

    private static JsonArray findings(JsonObject answer) {
        return answer.getAsJsonArray("findings");
    }

    private static List<String> said(JsonObject answer) {
        return findings(answer).asList().stream().map(JsonElement::getAsJsonObject)
                .map(finding -> finding.get("severity").getAsString() + ' ' + finding.get("message").getAsString()).toList();
    }

    private static JsonObject mend(JsonObject answer, int finding, int mend) {
        return findings(answer).get(finding).getAsJsonObject().getAsJsonArray("mends").get(mend).getAsJsonObject();
    }

    /** Does what a mend says, in the file that it is for. */
    private void write(String list, JsonObject mend) {
        Path file = folder.resolve(mend.has("file") ? mend.get("file").getAsString() : list);
        StringBuilder text = new StringBuilder(Folders.read(file));
        mend.getAsJsonArray("edits").asList().stream().map(JsonElement::getAsJsonObject)
                .sorted((a, b) -> b.get("offset").getAsInt() - a.get("offset").getAsInt())
                .forEach(edit -> text.replace(edit.get("offset").getAsInt(), edit.get("offset").getAsInt()
                        + edit.get("length").getAsInt(), edit.get("text").getAsString()));
        Folders.write(file, text.toString());
    }

    /** What stands behind the list's name in the first line. */
    private String total(String list) {
        return Shell.in(folder, "points", list).lines().get(0).replaceFirst("^\\S+ *([0-9]+).*", "$1");
    }

    @Test
    void roundTwo() {
        Folders.copy("house-rules", folder);
        JsonObject answer = check("lists/quill-2.list");
        assertEquals(List.of(ARMOUR, "breach " + TREADS), said(answer));
        assertEquals("140", total("lists/quill-2.list"));
        for (int finding : List.of(0, 1)) {
            assertEquals("Strike Tread troop (mends 2 findings).", mend(answer, finding, 0).get("label").getAsString());
        }
        write("lists/quill-2.list", mend(answer, 1, 0));
        // 40 of 120 is a third, and 2 troops are what the winter allows.
        assertEquals(List.of(), said(check("lists/quill-2.list")));
        assertEquals("120", total("lists/quill-2.list"));
    }

    @Test
    void roundThree() {
        Folders.copy("house-rules", folder);
        JsonObject answer = check("lists/quill-3.list");
        assertEquals(List.of(ARMOUR, RELAXED), said(answer));
        assertEquals(List.of("Take Foot at strength 90, 90 points each.", "Strike Tread troop."),
                List.of(mend(answer, 0, 0).get("label").getAsString(), mend(answer, 0, 1).get("label").getAsString()));
        write("lists/quill-3.list", mend(answer, 0, 0));
        // 60 of 150 are 40 percent exactly.
        assertEquals(List.of(RELAXED), said(check("lists/quill-3.list")));
        assertEquals("150", total("lists/quill-3.list"));
        JsonObject rule = findings(answer).get(1).getAsJsonObject().getAsJsonObject("rule");
        assertEquals(List.of("weekend.rules", "Charity weekend"),
                List.of(rule.get("file").getAsString(), rule.get("layer").getAsString()));
    }

    @Test
    void roundFive() {
        Folders.copy("house-rules", folder);
        JsonObject answer = check("lists/quill-5.list");
        assertEquals(List.of(), said(answer));
        assertEquals("140", total("lists/quill-5.list"));
        // 4 troops are 1 more than published, and 80 points are 5 more than half of 150.
        assertEquals(List.of("breach Armour (The published book): at most 50 percent of the limit on Armour, that is 75 of 150; the list has"
                        + " 80 points, 5 too many.",
                "breach Tread troops (The published book): at most 3 of Tread troop; the list has 4, 1 too many."), said(check("lists/brack-5.list")));
    }

    @Test
    void aWeekendThatDoesNotSayThatItRelaxes() {
        Folders.copy("house-rules-unsaid", folder);
        JsonObject answer = check(".");
        assertEquals(List.of(ARMOUR, "breach " + TREADS,
                "breach Charity weekend and Winter both change this, and neither stands over the other; the stricter of the two"
                        + " stands."), said(answer).subList(0, 3));
        Map<String, Integer> counts = Map.of("breaches", 4, "cautions", 0, "notes", 0);
        counts.forEach((name, count) -> assertEquals(count, answer.getAsJsonObject("summary").get(name).getAsInt(), name));
        assertEquals("layer.relaxes-unsaid", findings(answer).get(3).getAsJsonObject().get("code").getAsString());
        write("lists/quill-3.list", mend(answer, 0, 0));
        assertEquals(List.of(), said(check("lists/quill-3.list")), "the strictest stands, and striking one troop heeds it");
    }

    @Test
    void theOrganisersWord() {
        Folders.copy("house-rules", folder);
        String excused = "note " + TREADS + " Excused by Ombra: Birthday.";
        JsonObject answer = check("lists/brack-2.list");
        assertEquals(List.of(ARMOUR, excused), said(answer));
        assertFalse(findings(answer).get(1).getAsJsonObject().getAsJsonArray("mends").iterator().hasNext());
        // With the third troop excused, ten points of foot are less than striking twenty.
        assertEquals("Take Foot at strength 90, 90 points each.", mend(answer, 0, 0).get("label").getAsString());
        write("lists/brack-2.list", mend(answer, 0, 0));
        assertEquals(List.of(excused), said(check("lists/brack-2.list")));
        JsonObject quill = check("lists/quill-2.list");
        JsonArray mends = findings(quill).get(1).getAsJsonObject().getAsJsonArray("mends");
        write("lists/quill-2.list", mends.get(mends.size() - 1).getAsJsonObject());
        assertEquals(List.of(ARMOUR, "note " + TREADS + " Excused by Ombra."), said(check("lists/quill-2.list")));
    }
}
