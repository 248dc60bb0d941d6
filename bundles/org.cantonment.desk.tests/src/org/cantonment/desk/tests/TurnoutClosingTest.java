package org.cantonment.desk.tests;

import static org.cantonment.desk.tests.ShoppingAnswers.boxes;
import static org.cantonment.desk.tests.ShoppingAnswers.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.cantonment.testkit.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** What closes a shortage at least cost, told with the turnout; every sum was worked out by hand. */
class TurnoutClosingTest {
    private static final String DAY = "; by prices of 2031-03-03 (the day on which the campaign begins).";

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        Folders.copy("shortage", folder);
    }

    private List<String> lines(String... call) {
        return Shell.in(folder, call).lines();
    }

    private JsonObject closing(String... call) throws IOException {
        JsonObject answer = JsonParser.parseString(Shell.in(folder, call).out()).getAsJsonObject();
        assertEquals(List.of(), new JsonSchema(JsonParser.parseString(Files.readString(Project.file(
                "docs/json/turnout.schema.json"))).getAsJsonObject()).check(answer));
        return answer.getAsJsonObject("closing");
    }

    /** Two carts are short; three for 9.00 are cheaper than two long wagons for 10.00, which would set gun wagons free. */
    @Test
    void theCheapestWayIsToldBesideTheShortage() throws IOException {
        List<String> lines = lines("turnout", "lists/ombra-1.list");
        assertTrue(lines.contains("It is closed by: 2 more of Scout cart."), lines.toString());
        assertTrue(lines.contains("At least cost: 9.00 EUR, 1 Three scout carts from The works" + DAY), lines.toString());
        JsonObject plan = closing("turnout", "lists/ombra-1.list", "--json").getAsJsonObject("plan");
        assertEquals(List.of("9.00", "1 Carts-3"), List.of(text(plan, "total"), boxes(plan)));
        assertTrue(plan.get("proven").getAsBoolean());
        Folders.retype(folder.resolve("works.range"), "price 5.00", "price 4.49");
        assertTrue(lines("turnout", "lists/ombra-1.list").contains("At least cost: 8.98 EUR, 2 Long wagon from The works" + DAY));
    }

    @Test
    void nothingLessThanExactCostsMore() {
        List<String> lines = lines("turnout", "lists/ombra-1.list", "--likeness", "exact");
        assertTrue(lines.contains("At least cost: 20.50 EUR, 1 Three scout carts and 1 Two gun wagons from The works" + DAY),
                lines.toString());
        assertTrue(Shell.in(folder, "turnout", "lists/ombra-1.list", "--likeness", "exact", "--reply").out()
                .contains("At least cost: 20.50 EUR"));
    }

    @Test
    void severalListsAreClosedTogether() throws IOException {
        List<String> lines = lines("turnout", "lists/ombra-1.list", "lists/ombra-2.list");
        assertTrue(lines.contains("At least cost: 20.50 EUR, 1 Three scout carts and 1 Two gun wagons from The works" + DAY),
                lines.toString());
        assertEquals("20.50", text(closing("turnout", "lists/ombra-1.list", "lists/ombra-2.list", "--json")
                .getAsJsonObject("plan"), "total"));
    }

    @Test
    void anEveningIsClosedInOneOrder() throws IOException {
        Folders.retype(folder.resolve("season.campaign"), "  . likeness exact", "  . likeness exact\n  . session Tuesday\n"
                + "  . P1 meets P2 in Tuesday\nplayer P2 \"Brack\"");
        Folders.write(folder.resolve("lists/brack.list"), "list by P2 round 2\nCompany\n  . Survey\n");
        Folders.write(folder.resolve("shelves/brack.shelf"), "shelf of P2\n2 Scout-Cart\n");
        List<String> lines = lines("turnout", "--session", "Tuesday", "--round", "2", ".");
        assertTrue(lines.contains("At least cost: 20.50 EUR, 1 Three scout carts and 1 Two gun wagons from The works" + DAY),
                lines.toString());
        assertEquals("20.50", text(closing("turnout", "--session", "Tuesday", "--round", "2", ".", "--json")
                .getAsJsonObject("plan"), "total"));
    }

    @Test
    void whatNobodySellsOrHasNoPriceIsSaid() throws IOException {
        Folders.retype(folder.resolve("shelves/ombra.shelf"), "14 Marsh-Foot", "");
        List<String> lines = lines("turnout", "lists/ombra-1.list");
        int at = lines.indexOf("No purchase closes it, by prices of 2031-03-03 (the day on which the campaign begins).");
        assertTrue(at > 0, lines.toString());
        assertEquals("Ombra, round 1 needs 10 of Marsh foot; nobody sells it or anything that may stand for it, and none is"
                + " there.", lines.get(at + 1));
        JsonObject closing = closing("turnout", "lists/ombra-1.list", "--json");
        assertTrue(closing.get("impossible").getAsBoolean());
        assertEquals("buying.nobody-sells", text(closing.getAsJsonArray("findings").get(0).getAsJsonObject(), "code"));
        Folders.retype(folder.resolve("works.range"), "box Long-1", "box Feet\n  . 10 Marsh-Foot\nbox Long-1");
        assertTrue(lines("turnout", "lists/ombra-1.list").stream().anyMatch(line -> line.endsWith("what holds it is not on sale"
                + " on that day, or no price says what it costs in EUR: Feet.")), lines.toString());
    }

    @Test
    void whereNoBoxIsKnownThatIsSaid() throws IOException {
        Folders.write(folder.resolve("works.range"), Folders.read(folder.resolve("works.range")).split("box ")[0]);
        assertTrue(lines("turnout", "lists/ombra-1.list").contains("What closing it costs is not known: There is no range with"
                + " boxes in this folder, so nothing can be bought."));
        assertFalse(closing("turnout", "lists/ombra-1.list", "--json").has("plan"));
    }

    @Test
    void nothingIsSaidWhereNothingIsShort() {
        Folders.retype(folder.resolve("shelves/ombra.shelf"), "14 Marsh-Foot", "14 Marsh-Foot\n9 Scout-Cart");
        Shell shell = Shell.in(folder, "turnout", "lists/ombra-1.list");
        assertEquals(0, shell.code(), shell.out());
        assertFalse(shell.out().contains("cost"), shell.out());
    }
}
