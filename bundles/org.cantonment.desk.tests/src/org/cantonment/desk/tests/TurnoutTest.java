package org.cantonment.desk.tests;

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

/** Shortages, evenings and weeks of a small club, as books; every number solved by hand. */
class TurnoutTest {
    private static final String RANGE = """
            range Works in EUR
            piece Gun-Wagon "Gun wagon"
            piece Long-Wagon "Long wagon"
            piece Scout-Cart "Scout cart"
            piece Marsh-Foot "Marsh foot"
            piece Tread-Wagon "Tread wagon"
            piece Crank "Crank car"
            piece Gun "Gun car"
            part Car-Frame "Car frame"
              . builds Crank
              . builds Gun
            """;
    private static final String RULES = """
            rules Pond "The pond book"
            era Dyke-War "The Dyke War"
            item Bridge "Folding bridge"
            unit Gun-Troop "Gun troop"
              . strength 4 for 20 points
              . each needs Gun-Wagon
            unit Staff "Staff"
              . strength 2 for 10 points
              . each needs Gun-Wagon
            unit Survey "Survey"
              . strength 3 for 9 points
              . each needs Scout-Cart
            unit Marsh-Troop "Marsh troop"
              . strength 10 for 10 points
              . each needs Marsh-Foot
            unit Tread-Troop "Tread troop"
              . strength 1 to 9 for 8 points
              . each needs Tread-Wagon
            unit Crank-Troop "Crank troop"
              . strength 1 to 9 for 5 points
              . each needs Crank
            unit Gun-Cars "Gun cars"
              . strength 1 to 9 for 7 points
              . each needs Gun
            unit Bridgers "Bridgers"
              . strength 1 for 1 point
              . needs Bridge
            likeness Club-Table
              . lets Long-Wagon stand for Gun-Troop
              . lets Gun-Wagon stand for Survey
            """;
    private static final String SEASON = """
            campaign Season "A season" from 2031-03-03
            plays Pond
            player Ombra
            player Brack
            player Quill
            round 1
              . play from 2031-03-10 to 2031-03-16
              . session Tuesday on 2031-03-11
              . session Thursday on 2031-03-13
              . Ombra meets Brack in Tuesday
              . Ombra meets Quill in Tuesday
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        book("works.range", RANGE);
        book("pond.rules", RULES);
        book("season.campaign", SEASON);
    }

    private void book(String name, String text) {
        Folders.write(folder.resolve(name), text);
    }

    private void survey() {
        book("ombra.list", "list by Ombra round 1\nGun-Troop\nStaff\nSurvey\nMarsh-Troop\n");
        book("ombra.shelf", "shelf of Ombra\n4 Gun-Wagon\n2 Long-Wagon\nScout-Cart\n14 Marsh-Foot\n");
    }

    private void muster(int ombra, int brack, int quill) {
        book("ombra.list", "list by Ombra round 1\nTread-Troop of " + ombra + "\n");
        book("brack.list", "list by Brack round 1\nTread-Troop of " + brack + "\n");
        book("quill.list", "list by Quill round 1\nTread-Troop of " + quill + "\n");
        book("ombra.shelf", "shelf of Ombra\n4 Tread-Wagon\n");
        book("brack.shelf", "shelf of Brack\nTread-Wagon\n");
        book("quill.shelf", "shelf of Quill\n2 Tread-Wagon\n");
        book("club.shelf", "shelf of the club\nTread-Wagon\n");
    }

    /** One frame: one spotter stands for the crank, the other is worked over with the wheels that are left. */
    @Test
    void whatIsBuiltToBeWorkedOverIsToldInItsOrder() throws IOException {
        book("works.range", RANGE + """
                piece Spotter "Spotter"
                bits Wheels "Spare wheels"
                part Frame "Carrier frame"
                  . builds 2 Spotter leaves 2 Wheels
                  . builds 3 Tread-Wagon
                """);
        book("pond.rules", RULES + "  . lets Spotter stand for Crank\n  . turns Spotter and 2 Wheels into 1 Gun at most 2 times\n");
        book("ombra.list", "list by Ombra round 1\nGun-Cars of 1\nCrank-Troop of 1\n");
        book("ombra.shelf", "shelf of Ombra\nFrame\n");
        Shell shell = Shell.in(folder, "turnout", "ombra.list");
        assertEquals(0, shell.code(), shell.out());
        int built = shell.lines().indexOf("To build: 1 Carrier frame as 2 Spotter, glued for good.");
        assertTrue(built > 0, shell.out());
        assertEquals("To work over: 1 Spotter and 2 Spare wheels into 1 Gun car; built first: 1 Spotter and 2 Spare wheels.",
                shell.lines().get(built + 1));
        assertEquals(List.of(), new JsonSchema(JsonParser.parseString(Files.readString(Project.file(
                "docs/json/turnout.schema.json"))).getAsJsonObject()).check(
                        JsonParser.parseString(Shell.in(folder, "turnout", "ombra.list", "--json").out()).getAsJsonObject()));
    }

    @Test
    void theThreeTogetherNeedNineAndSevenAreAllThereIs() {
        survey();
        Shell shell = Shell.in(folder, "turnout", "ombra.list");
        assertEquals(1, shell.code());
        assertEquals("Ombra, round 1: 17 of 19 pieces stand, 2 short, with what is there on 2031-03-11.",
                shell.lines().get(0));
        assertTrue(shell.lines().contains("Short: Gun troop, Staff and Survey together need 9; all that may stand for them is"
                + " 7: 4 Gun wagon, 2 Long wagon and 1 Scout cart. Short by 2."), shell.out());
        assertTrue(shell.lines().contains("  Gun troop: 2 Gun wagon, 2 Long wagon (stand-in)"), shell.out());
        assertTrue(shell.lines().contains("  Survey: 1 Scout cart; 2 short"), shell.out());
        assertTrue(shell.lines().contains("It is closed by: 2 more of Scout cart."), shell.out());
    }

    @Test
    void exactOnlyLacksFourInTwoBlocks() {
        survey();
        List<String> lines = Shell.in(folder, "turnout", "ombra.list", "--likeness", "exact").lines();
        assertTrue(lines.get(0).contains("15 of 19 pieces stand, 4 short"), lines.get(0));
        assertEquals(2, lines.stream().filter(line -> line.startsWith("Short: ")).count());
        assertTrue(lines.contains("Short: Survey needs 3; all that may stand for it is 1: 1 Scout cart. Short by 2."),
                lines.toString());
    }

    @Test
    void oneChoiceOfWhatIsGluedServesAllLists() {
        book("r1.list", "list by Ombra round 1\nCrank-Troop of 1\n");
        book("dream.list", "list Dream by Ombra under Pond\nCrank-Troop of 1\nGun-Cars of 1\n");
        book("ombra.shelf", "shelf of Ombra\n2 Car-Frame\n");
        Shell both = Shell.in(folder, "turnout", "r1.list", "dream.list");
        assertEquals(0, both.code());
        assertEquals(List.of("2 lists, one choice of what is glued: all of them can be fielded.",
                "  Glue 1 Car frame as 1 Crank car.", "  Glue 1 Car frame as 1 Gun car."), both.lines().subList(0, 3));
        book("more.list", "list More by Ombra under Pond\nGun-Cars of 2\n");
        Shell three = Shell.in(folder, "turnout", "r1.list", "dream.list", "more.list");
        assertEquals(1, three.code());
        assertTrue(three.lines().get(0).endsWith("1 piece is short in all."), three.lines().get(0));
    }

    @Test
    void anEveningSaysWhoLendsWhatToWhom() {
        muster(3, 3, 2);
        Shell tuesday = Shell.in(folder, "turnout", "--session", "Tuesday", "--round", "1", ".");
        assertEquals(0, tuesday.code());
        assertEquals(List.of("Tuesday of round 1: all 3 lists can be played, 2 lend.",
                "  Ombra lends 1 Tread wagon to Brack.", "  the club lends 1 Tread wagon to Brack."),
                tuesday.lines().subList(0, 3));
        muster(4, 3, 2);
        Shell one = Shell.in(folder, "turnout", "--session", "Tuesday", "--round", "1", ".");
        assertEquals(1, one.code());
        assertTrue(one.lines().contains("Short: Brack, Ombra and Quill together need 9 of Tread wagon; all that may stand for"
                + " them, whoever has it, is 8: 8 Tread wagon. Short by 1."), one.out());
        book("season.campaign", SEASON.replace("Ombra meets Quill in Tuesday", "Ombra meets Quill in Thursday"));
        assertTrue(Shell.in(folder, "turnout", "--session", "Tuesday", "--round", "1", ".").lines()
                .contains("  Quill lends 2 Tread wagon to Brack."));
        Shell wrong = Shell.in(folder, "turnout", "--session", "Sunday", "--round", "1", ".");
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("it has Tuesday, Thursday"), wrong.err());
    }

    @Test
    void theWeekMakesTheShelf() {
        muster(4, 3, 2);
        book("week-1.week", "week 1 of Season\nOmbra lent 2 Tread-Wagon to Brack on 2031-03-03\n");
        book("week-2.week", "week 2 of Season\nBrack returned 2 Tread-Wagon to Ombra on 2031-03-12\n");
        List<String> now = Shell.in(folder, "turnout", "ombra.list").lines();
        assertEquals("Ombra, round 1: 2 of 4 pieces stand, 2 short, with what is there on 2031-03-11.", now.get(0));
        assertTrue(now.contains("Note: 2 Tread wagon are lent to Brack."), now.toString());
        assertEquals("Ombra, round 1: all 4 pieces stand, as known after week 2.",
                Shell.in(folder, "turnout", "ombra.list", "--week", "2").lines().get(0));
        assertEquals("Brack, round 1: all 3 pieces stand, as known after week 1.",
                Shell.in(folder, "turnout", "brack.list", "--week", "1").lines().get(0));
    }

    @Test
    void whatTheRollHasLostIsToldBesideWhatLiesOnTheShelf() {
        muster(3, 3, 2);
        book("week-1.week", "week 1 of Season\nBrack beat Ombra on 2031-03-04\n. Ombra lost 2 Tread-Wagon\n");
        List<String> lines = Shell.in(folder, "turnout", "ombra.list").lines();
        assertTrue(lines.get(0).contains("all 3 pieces stand"), lines.get(0));
        assertTrue(lines.contains("Roll: Tread wagon: 1 of 3 left (2 lost, 0 wounded), 3 wanted, 2 too many."),
                lines.toString());
    }

    @Test
    void itemsAreBroughtAndBorrowedPiecesCount() {
        muster(4, 1, 2);
        book("brack.list", "list by Brack round 1\nTread-Troop of 2\nBridgers\nborrow 2 Tread-Wagon from the club\n");
        List<String> lines = Shell.in(folder, "turnout", "brack.list").lines();
        assertTrue(lines.contains("To bring: 1 Folding bridge, which the list does not say: write 'brings Bridge'."),
                lines.toString());
        assertTrue(lines.contains("Note: Of 2 Tread wagon that are to be borrowed from the club, only 1 is there."),
                lines.toString());
        assertTrue(lines.get(0).contains("all 2 pieces stand"), lines.get(0));
    }

    @Test
    void guessesAreSaid() {
        book("ombra.list", "list by Ombra round 1\nTread-Troop of 3\n");
        book("ombra.shelf", "shelf of Ombra\n2 Tread-Wagon\nguessed 4 Tread-Wagon\n");
        assertTrue(Shell.in(folder, "turnout", "ombra.list").lines().contains("This rests on guesses: 1 Tread wagon."));
    }

    @Test
    void theEditorIsToldWhereTheRoundAsks() {
        survey();
        assertFalse(Shell.in(folder, "check", ".").out().contains("turnout.short"));
        book("season.campaign", SEASON.replace("  . session Tuesday", "  . turnout 90 percent\n  . session Tuesday"));
        String found = Shell.in(folder, "check", ".").out();
        assertTrue(found.contains("ombra.list:4:1: caution turnout.short: Gun troop, Staff and Survey together need 9;"), found);
        assertTrue(found.contains("In all 17 of 19 pieces stand; the round asks for 90 percent."), found);
        assertEquals(found, Shell.in(folder, "check", "ombra.list").out());
        book("season.campaign", SEASON.replace("  . session Tuesday", "  . turnout 89 percent\n  . session Tuesday"));
        assertFalse(Shell.in(folder, "check", ".").out().contains("turnout.short"));
    }

    @Test
    void aShelfThatClaimsWhatItsPartsCannotGiveIsTold() {
        book("ombra.list", "list by Ombra round 1\nCrank-Troop of 3\n");
        book("ombra.shelf", "shelf of Ombra\n2 Car-Frame\n  . built 3 Crank\n");
        List<String> lines = Shell.in(folder, "turnout", "ombra.list").lines();
        assertTrue(lines.get(0).contains("2 of 3 pieces stand"), lines.get(0));
        String claim = "It says that 3 of Crank car were built, but 2 of Car frame can account for 2 at the most; so many are"
                + " counted.";
        assertTrue(lines.contains("Note: " + claim), lines.toString());
        String found = Shell.in(folder, "check", ".").out();
        assertTrue(found.contains("ombra.shelf:3:"), found);
        assertEquals(1, found.lines().filter(line -> line.endsWith("shelf.beyond-contents: " + claim)).count(), found);
    }

    /** Lines in a circle go one step each: what stands for another stands for no third by that. */
    @Test
    void standInsInACircleAreTakenOneStepAtATime() {
        book("pond.rules", RULES + "  . lets Crank stand for Gun\n  . lets Gun stand for Tread-Wagon\n"
                + "  . lets Tread-Wagon stand for Crank\n");
        book("ombra.list", "list by Ombra round 1\nGun-Cars of 1\nTread-Troop of 1\nCrank-Troop of 1\n");
        book("ombra.shelf", "shelf of Ombra\n3 Crank\n");
        Shell shell = Shell.in(folder, "turnout", "ombra.list");
        assertEquals(1, shell.code());
        assertTrue(shell.lines().get(0).contains("2 of 3 pieces stand, 1 short"), shell.out());
        assertTrue(shell.lines().contains("  Tread troop of 1: nobody; 1 short"), shell.out());
    }

    @Test
    void aShelfBelowZeroIsFoundAtItsLine() {
        muster(3, 3, 2);
        book("week-1.week", "week 1 of Season\nBrack lent 2 Tread-Wagon to Ombra\n");
        String found = Shell.in(folder, "check", ".").out();
        assertTrue(found.contains("week-1.week:2:1: caution shelf.below-zero: 2 of Tread wagon were lent, but only 1 is on the"
                + " shelf; so many are booked."), found);
    }

    @Test
    void jsonIsAsDocumented() throws IOException {
        survey();
        JsonObject one = json("turnout", "ombra.list", "--json");
        assertEquals(List.of(), schema("turnout").check(one));
        JsonObject list = one.getAsJsonArray("lists").get(0).getAsJsonObject();
        assertEquals(17, list.get("filled").getAsInt());
        assertEquals(2, list.getAsJsonArray("reasons").get(0).getAsJsonObject().get("lacking").getAsInt());
        muster(4, 3, 2);
        assertEquals(List.of(), schema("turnout").check(json("turnout", "--session", "tuesday", "--round", "1", ".",
                "--json")));
        book("dream.list", "list Dream by Ombra under Pond\nCrank-Troop of 1\n");
        assertEquals(List.of(), schema("turnout").check(json("turnout", "ombra.list", "dream.list", "--json")));
    }

    private JsonObject json(String... call) {
        return JsonParser.parseString(Shell.in(folder, call).out()).getAsJsonObject();
    }

    private static JsonSchema schema(String name) throws IOException {
        return new JsonSchema(JsonParser.parseString(Files.readString(Project.file("docs/json/" + name + ".schema.json")))
                .getAsJsonObject());
    }

    @Test
    void repliesAreShort() {
        survey();
        String reply = Shell.in(folder, "turnout", "ombra.list", "--reply").out();
        assertTrue(reply.length() < 500 && reply.contains("2 of 19 pieces short"), reply);
        muster(4, 3, 2);
        assertTrue(Shell.in(folder, "turnout", "--session", "Tuesday", "--round", "1", ".", "--reply").out().length() < 500);
    }

    @Test
    void wrongCallsAreAnswered() {
        survey();
        muster(3, 3, 2);
        book("nobody.list", "list Dream under Pond\nStaff\n");
        assertWrong("no likeness", "turnout", "ombra.list", "--likeness", "close");
        assertWrong("no whole number", "turnout", "ombra.list", "--week", "0");
        assertWrong("go together", "turnout", "ombra.list", "--round", "1");
        assertWrong("two ways to answer", "turnout", "ombra.list", "--json", "--reply");
        assertWrong("not all one player's", "turnout", "ombra.list", "brack.list");
        assertWrong("has no player", "turnout", "nobody.list");
        assertWrong("is no list", "turnout", "ombra.shelf");
    }

    private void assertWrong(String words, String... call) {
        Shell shell = Shell.in(folder, call);
        assertEquals(2, shell.code(), shell.out());
        assertTrue(shell.err().contains(words), shell.err());
    }
}
