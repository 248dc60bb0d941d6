package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/**
 * A least change that puts units with options into a formation that it puts in, and takes a successor with options: written
 * into the text of the list, read again and judged. Invented; the sums were worked out by hand.
 */
class WrittenChangesTest {
    private static final String RULES = """
            rules Boom-Book "The boom book"
            era Ice "The Ice"
            era Melt "The Melt" after Ice
            unit Raft "Raft"
              . strength 2 for 10 points
              . option Boom-Pole "Boom pole", at most 2, for 3 points each
            unit Sled "Sled"
              . strength 2 for 8 points
              . available to Ice
              . becomes Raft from Melt
            formation Flotilla "Flotilla"
              . billet Line 1 to 2 of Raft, Sled
            limit Many "Two flotillas" from Melt
              . at least 2 of Flotilla
            limit Poles "Poles" from Melt
              . always options on units is at least 3
            """;
    private static final String CAMPAIGN = """
            campaign Thaw "The thaw" from 2031-03-03
            plays Boom-Book
            player Ombra
            round 1
              . era Ice
              . limit 60 points
            """;
    private static final String LIST = """
            list by Ombra round 1
            Flotilla
              . Sled""";

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        Folders.write(folder.resolve("boom.rules"), RULES);
        Folders.write(folder.resolve("thaw.campaign"), CAMPAIGN);
        Folders.write(folder.resolve("ombra.list"), LIST);
    }

    @Test
    void theListAsWrittenIsLegalWithTheOptionsThatWereAdded() {
        JsonObject answer = JsonParser.parseString(Shell.in(folder, "eras", "--json", "ombra.list").out()).getAsJsonObject();
        JsonObject melt = answer.getAsJsonArray("eras").get(1).getAsJsonObject();
        JsonObject change = melt.getAsJsonObject("least").getAsJsonArray("changes").get(0).getAsJsonObject();
        // The sled of 8 goes; a raft of 10 comes in its place and another in a flotilla of its own; three poles for 9.
        assertEquals(List.of(37, 29), List.of(change.get("moved").getAsInt(), change.get("points").getAsInt()));
        assertTrue(change.getAsJsonArray("actions").toString().contains(" with "), change.toString());
        Folders.write(folder.resolve("ombra.list"), edited(change));
        Folders.retype(folder.resolve("thaw.campaign"), "era Ice", "era Melt");
        String text = Folders.read(folder.resolve("ombra.list"));
        assertEquals("", Shell.in(folder, "check", "ombra.list").out(), text);
        assertEquals("ombra.list: 29 points of 60", Shell.in(folder, "points", "ombra.list").lines().get(0), text);
    }

    private static String edited(JsonObject change) {
        StringBuilder edited = new StringBuilder(LIST);
        change.getAsJsonArray("edits").asList().stream().map(JsonElement::getAsJsonObject)
                .sorted((a, b) -> b.get("offset").getAsInt() - a.get("offset").getAsInt())
                .forEach(edit -> edited.replace(edit.get("offset").getAsInt(), edit.get("offset").getAsInt()
                        + edit.get("length").getAsInt(), edit.get("text").getAsString()));
        return edited.toString();
    }
}
