package org.cantonment.desk.tests;

import static org.cantonment.desk.tests.ShoppingAnswers.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.cantonment.testkit.Project;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import com.google.gson.JsonObject;

/** Each player of the example season has a bundle that saves him something and one that does not, as the examples say. */
class SeasonBundlesTest {

    @ParameterizedTest
    @CsvSource({ "Ombra, 10, O-85, 3.00, O-84", "Brack, 5-10, O-84, 3.00, O-85", "Quill, 10, G-84, 2.37, O-84",
            "Nib, 9, O-84, 3.00, O-85", "Tessel, 5-9, G-84, 27.00, G-85", "Fenn, 8, G-84, 27.00, G-85",
            "Skerry, 8, G-85, 15.00, G-84", "Marl, 8, G-84, 27.00, G-85" })
    void oneIsWorthItAndOneIsNot(String player, String rounds, String worth, String saves, String not) {
        assertEquals(saves, saving(player, rounds, worth));
        assertEquals("0.00", saving(player, rounds, not));
    }

    private static String saving(String player, String rounds, String box) {
        JsonObject answer = ShoppingAnswers.json(Project.file("examples/lake-war"), "worth", box, "--for", player, "--lists",
                rounds);
        JsonObject to = answer.getAsJsonObject("toPlayer");
        assertTrue(to.getAsJsonObject("without").get("proven").getAsBoolean()
                && to.getAsJsonObject("with").get("proven").getAsBoolean());
        return text(to, "saving");
    }
}
