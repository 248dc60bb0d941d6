package org.cantonment.desk.tests;

import static org.cantonment.desk.tests.ShoppingAnswers.assertWrong;
import static org.cantonment.desk.tests.ShoppingAnswers.json;
import static org.cantonment.desk.tests.ShoppingAnswers.objects;
import static org.cantonment.desk.tests.ShoppingAnswers.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.shopping.Errand;
import org.cantonment.desk.shopping.Growing;
import org.cantonment.desk.shopping.Shops;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.testkit.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import com.google.gson.JsonObject;

/** What lists that are composed must be like: whom they join, what they keep, which options they have; worked out by hand. */
class ComposedListsTest {
    private static final String JOINS = "limit Lamps-Join \"A lamp shines for a gun\"\n  . taking Lamp joins ";

    @TempDir
    private Path folder;

    @BeforeEach
    void copy() {
        Folders.copy("composing", folder);
    }

    private void rules(String more) {
        Folders.write(folder.resolve("lamp.rules"), Folders.read(folder.resolve("lamp.rules")) + more);
    }

    private void shelf(String lines) {
        Folders.write(folder.resolve("ombra.shelf"), "shelf of P1 in EUR on 2031-03-01\n" + lines);
    }

    private JsonObject round(int at, String... call) {
        return objects(json(folder, call), "rounds").skip(at).findFirst().orElseThrow();
    }

    /** 40 points with a lamp: a watch, a gun of two and two lamps for 24.00; one lamp and a gun of three would be 25.00. */
    @Test
    void whoMustJoinSomebodyJoinsOneWithAName() {
        rules(JOINS + "Gun\n");
        shelf("wish Lights\n  . first Lamp\n");
        JsonObject answer = json(folder, "grow", "Ombra", "--rounds", "1", "--least", "100");
        assertEquals("24.00", text(answer.getAsJsonObject("plan"), "total"));
        JsonObject round = objects(answer, "rounds").findFirst().orElseThrow();
        assertEquals("Company (Watch, Gun of 2 as First-Gun, 2 Lamp joins First-Gun)", text(round, "list"));
        assertTrue(round.getAsJsonArray("breaches").isEmpty(), round.toString());
        assertEquals("list by P1 round 1\n\nCompany\n  . Watch\n  . Gun of 2 as First-Gun\n  . 2 Lamp joins First-Gun\n",
                text(round, "book"));
    }

    @Test
    void aCompulsoryUnitMayBeOneThatJoins() {
        Folders.retype(folder.resolve("lamp.rules"), "Lamps 0 to 2", "Lamps 1 to 2");
        rules(JOINS + "Gun\n");
        JsonObject round = round(0, "grow", "Ombra", "--rounds", "1");
        assertEquals("Company (Watch, Gun of 2 as First-Gun, Lamp joins First-Gun)", text(round, "list"));
        assertTrue(round.getAsJsonArray("breaches").isEmpty(), round.toString());
    }

    /** Two different guns are asked for, so each lamp has its own. */
    @Test
    void asManyAreJoinedAsTheRuleAsks() {
        rules(JOINS + "2 of Gun\n");
        shelf("wish Lights\n  . first Lamp\n");
        JsonObject round = round(0, "grow", "Ombra", "--rounds", "2", "--least", "80");
        assertEquals("Company (Watch, Gun of 2 as First-Gun, Gun of 2 as Second-Gun, Lamp joins First-Gun, Lamp joins Second-Gun)",
                text(round, "list"));
        assertTrue(round.getAsJsonArray("breaches").isEmpty(), round.toString());
    }

    /** Every company that has a lamp has the gun that it joins. */
    @Test
    void whoIsJoinedStandsInTheSameFormation() {
        rules(JOINS + "Gun in each Company\nlimit Two \"Two companies\"\n  . exactly 2 of Company\n"
                + "limit Lit \"Two lamps at least\"\n  . at least 2 of Lamp\n");
        JsonObject round = round(0, "grow", "Ombra", "--rounds", "3");
        assertTrue(round.getAsJsonArray("breaches").isEmpty(), round.toString());
        for (String company : text(round, "list").split("Company")) {
            assertEquals(company.contains("Lamp"), company.contains(" as First-Gun") || company.contains(" as Second-Gun"), company);
        }
    }

    @Test
    void whoFindsNobodyToJoinIsLeftOut() {
        rules(JOINS + "Gun\n");
        shelf("wish Lights\n  . first Lamp\n  . never Gun\n");
        JsonObject answer = json(folder, "grow", "Ombra", "--rounds", "1");
        assertEquals("Company (Watch)", text(objects(answer, "rounds").findFirst().orElseThrow(), "list"));
        assertTrue(answer.getAsJsonArray("remarks").toString().contains("No list that was tried is legal with what is wished for"
                + " first"), answer.toString());
    }

    /** What is written into a file and read again is the same list, by all that a list says. */
    @Test
    void aListThatIsWrittenReadsBackAsItWasComposed() throws Unclear {
        rules(JOINS + "Gun\nlimit Flags \"Colours\"\n  . always option Flag on Watch is at least 1\n"
                + "support Boats at most 1 of Reserve\nunit Reserve \"Reserve\"\n  . needs Foot\n  . strength 1 for 2 points\n"
                + "limit Behind \"Somebody stays behind\"\n  . at least 1 of Reserve\n");
        Folders.retype(folder.resolve("lamp.rules"), "  . needs 10 Foot\n", "  . needs 10 Foot\n  . option Flag \"Flag\" for 1 point, adds"
                + " Flag\n");
        shelf("wish Lights\n  . first Lamp\n");
        Meanings before = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT).snapshot().meanings();
        Shops shops = Shops.of(before, Optional.empty(), Errand.of(List.of(), Optional.empty()));
        List<ForceList> composed = Growing.of(before, before.campaigns().get(0).players().get(0), new Growing.Terms(List.of(),
                List.of(), false, false, 90, Optional.empty()), shops, CancelToken.NEVER, Progress.SILENT).steps().stream()
                .map(step -> step.list().orElseThrow()).toList();
        Folders.write(folder.resolve("lists/readme.txt"), "Lists.\n");
        Shell shell = Shell.in(folder, "grow", "Ombra", "--least", "90", "--write", "lists");
        assertEquals(0, shell.code(), shell.out() + shell.err());
        List<ForceList> read = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT).snapshot().meanings().lists();
        assertEquals(composed.stream().map(ComposedListsTest::said).toList(), read.stream().map(ComposedListsTest::said).toList());
        assertTrue(said(composed.get(0)).contains(" joins ") && said(composed.get(0)).contains("Flag"), said(composed.get(0)));
        assertEquals(List.of(1, 2, 3), read.stream().map(list -> list.round().getAsInt()).toList());
        assertEquals(0, Shell.in(folder, "check", ".").code());
        // Written lists are taken as they are, and cost the same.
        assertEquals(text(json(folder, "grow", "Ombra").getAsJsonObject("plan"), "total"),
                text(json(folder, "grow", "Ombra", "--compose", "--least", "90").getAsJsonObject("plan"), "total"));
        // What is there already stays as it is.
        List<String> texts = Folders.texts(folder);
        Shell again = Shell.in(folder, "grow", "Ombra", "--least", "50", "--compose", "--write", "lists");
        assertEquals(1, again.code());
        assertTrue(again.err().contains("is there already and stays as it is"), again.err());
        assertEquals(texts, Folders.texts(folder));
        assertWrong(folder, "There is no file or folder 'nowhere'", "grow", "Ombra", "--write", "nowhere");
    }

    private static String said(ForceList list) {
        return list.player() + " " + entries(list.body().entries()) + " + " + entries(list.body().supports());
    }

    private static String entries(List<Entry> entries) {
        return entries.stream().map(one -> one.count() + " " + one.what() + " " + one.strength() + one.options() + one.alias() + one.joins()
                .map(host -> " joins " + host).orElse("") + entries(one.body().entries())).toList().toString();
    }

    /**
     * Round 2 takes one watch only, so two guns, of two and three, and two lamps beside it: 26.00. Two watches in round 1 would
     * cost nothing, but one would be gone: advice keeps to what stays, and only where the money does not reach it gives way.
     */
    @Test
    void adviceToKeepTheListBeforeIsFollowedWhereTheMoneyReaches() {
        keep(" caution");
        JsonObject wise = json(folder, "grow", "Ombra", "--rounds", "1-2", "--budgets", "26,0", "--least", "85");
        assertEquals("26.00", text(wise.getAsJsonObject("plan"), "total"));
        objects(wise, "rounds").forEach(round -> assertTrue(round.getAsJsonArray("cautions").isEmpty(), round.toString()));
        assertFalse(text(objects(wise, "rounds").findFirst().orElseThrow(), "list").contains("2 Watch"));
        JsonObject poor = json(folder, "grow", "Ombra", "--rounds", "1-2", "--budgets", "0,26", "--least", "85");
        assertEquals("Company (2 Watch)", text(objects(poor, "rounds").findFirst().orElseThrow(), "list"));
        assertEquals(1, objects(poor, "rounds").skip(1).findFirst().orElseThrow().getAsJsonArray("cautions").size());
        assertTrue(poor.getAsJsonArray("remarks").toString().contains("so others are taken, and the cautions stand with them"),
                poor.toString());
    }

    private void keep(String severity) {
        rules("limit Few \"Few watches\"\n  . at most 1 of Watch from round 2\n"
                + "limit Steady \"Steady\"" + severity + "\n  . keep the list before, change at most 0 units\n");
        shelf("20 Foot\n");
    }

    @Test
    void aRuleToKeepTheListBeforeIsNeverBroken() {
        keep("");
        JsonObject answer = json(folder, "grow", "Ombra", "--rounds", "1-2", "--budgets", "26,0", "--least", "85");
        assertEquals("26.00", text(answer.getAsJsonObject("plan"), "total"));
        objects(answer, "rounds").forEach(round -> assertTrue(round.getAsJsonArray("breaches").isEmpty(), round.toString()));
        assertEquals(1, Shell.in(folder, "grow", "Ombra", "--rounds", "1-2", "--budgets", "0,26", "--least", "85").code());
    }

    /** Round 1 is composed before a written list that keeps all of it, though two watches would cost nothing. */
    @Test
    void aComposedListLeavesTheWrittenOneAfterItLegal() {
        keep("");
        Folders.write(folder.resolve("lists/ombra-2.list"), "list by P1 round 2\nCompany\n  . Watch\n  . Gun of 3\n  . Gun of 2\n"
                + "  . 2 Lamp\n");
        JsonObject answer = json(folder, "grow", "Ombra", "--rounds", "1-2", "--least", "85");
        objects(answer, "rounds").forEach(round -> assertTrue(round.getAsJsonArray("breaches").isEmpty(), round.toString()));
        assertEquals("26.00", text(answer.getAsJsonObject("plan"), "total"));
        // Where the written one cannot be kept legal, that is told.
        Folders.retype(folder.resolve("lists/ombra-2.list"), "  . 2 Lamp\n", "");
        Folders.retype(folder.resolve("lists/ombra-2.list"), "  . Gun of 3\n  . Gun of 2\n", "");
        assertEquals(1, Shell.in(folder, "grow", "Ombra", "--rounds", "1-2", "--least", "85").code());
    }

    /** A list that goes on from a written one has all that it has. */
    @Test
    void aComposedListGoesOnFromTheWrittenOneBeforeIt() {
        keep("");
        Folders.write(folder.resolve("lists/ombra-1.list"), "list by P1 round 1\nCompany\n  . Watch\n  . Gun of 3\n  . Lamp\n");
        JsonObject second = round(1, "grow", "Ombra", "--rounds", "1-2", "--least", "85");
        assertTrue(second.getAsJsonArray("breaches").isEmpty(), second.toString());
        assertTrue(text(second, "list").contains("Lamp") && text(second, "list").contains("Gun"), second.toString());
        // The same with the round before not asked about.
        JsonObject alone = round(0, "grow", "Ombra", "--rounds", "2", "--compose", "--least", "85");
        assertTrue(alone.getAsJsonArray("breaches").isEmpty(), alone.toString());
    }

    /** A list that is composed anew does not follow the written one for the round before it that is composed anew as well. */
    @Test
    void listsThatAreComposedAnewCountNoMore() {
        rules("limit Steady \"Steady\"\n  . keep the list before, change at most 0 units\n"
                + "limit Once \"One lamp all season\"\n  . at most 1 of Lamp in the campaign\n");
        Folders.write(folder.resolve("lists/ombra-1.list"), "list by P1 round 1\nCompany\n  . Watch\n  . Lamp\n");
        Folders.write(folder.resolve("lists/ombra-2.list"), "list by P1 round 2\nCompany\n  . Watch\n  . 2 Gun of 2\n");
        shelf("10 Foot\n2 Field-Gun\n1 Lamp-Car\nwish Lights\n  . first Lamp\n");
        JsonObject answer = json(folder, "grow", "Ombra", "--rounds", "1-2", "--compose", "--least", "50");
        objects(answer, "rounds").forEach(round -> assertTrue(round.getAsJsonArray("breaches").isEmpty(), round.toString()));
        assertTrue(text(objects(answer, "rounds").skip(1).findFirst().orElseThrow(), "list").contains("Lamp"), answer.toString());
    }

    /** A watch costs nothing here, and what options cost no money are taken, as many as may be, since they use points. */
    @Test
    void optionsAreTakenThatTheRulesAskForOrWhosePiecesAreThere() {
        Folders.retype(folder.resolve("lamp.rules"), "  . needs 10 Foot\n", "  . needs 10 Foot\n"
                + "  . option Flag \"Flag\" for 1 point, adds Flag\n  . option Bombs \"Bombs\", at most 2, for 1 point each\n"
                + "  . option Horn \"Horn\" for 1 point, one of Noise\n  . option Drum \"Drum\" for 2 points, one of Noise\n");
        shelf("10 Foot\n");
        String[] call = {"grow", "Ombra", "--rounds", "1", "--least", "0"};
        assertEquals("Company (Watch with 2 Bombs and Drum)", text(round(0, call), "list"));
        shelf("10 Foot\n1 Flag\n");
        assertEquals("Company (Watch with 2 Bombs, Drum and Flag)", text(round(0, call), "list"));
        rules("limit Few-Bombs \"Few bombs\"\n  . always option Bombs on Watch is at most 1\n");
        assertEquals("Company (Watch with Bombs, Drum and Flag)", text(round(0, call), "list"));
        shelf("10 Foot\n");
        rules("limit Colours \"Colours\"\n  . always option Flag on Watch is at least 1\n"
                + "limit Quiet \"Quiet\"\n  . always option Drum on Watch is 0\n");
        JsonObject answer = json(folder, call);
        assertEquals("2.00", text(answer.getAsJsonObject("plan"), "total"));
        String list = text(objects(answer, "rounds").findFirst().orElseThrow(), "list");
        assertTrue(list.contains("Flag") && !list.contains("Drum") && !list.contains("2 Bombs"), list);
    }

    /**
     * Two rounds of the example season. From the second on a field hospital is compulsory, which has to be bought; the club
     * advises to keep the list before, and the player wishes for what is not there in every round.
     */
    @Test
    void theExampleSeasonGetsListsThatFollowRulesWishesAndAdvice() {
        Path season = Project.file("examples/lake-war");
        JsonObject answer = json(season, "grow", "Fenn", "--compose", "--rounds", "7-8");
        List<JsonObject> rounds = objects(answer, "rounds").toList();
        for (JsonObject round : rounds) {
            assertTrue(round.get("found").getAsBoolean(), round.toString());
            assertTrue(round.getAsJsonArray("breaches").isEmpty() && round.getAsJsonArray("cautions").isEmpty(), round.toString());
            assertTrue(text(round, "list").contains("Punt flotilla") || text(round, "list").contains("Barge flotilla"), round.toString());
        }
        assertTrue(text(rounds.get(1), "list").contains("Field hospital"), rounds.get(1).toString());
        assertTrue(answer.has("plan"), answer.toString());
    }

    /** What is said of composed lists is said of those that were tried. */
    @Test
    void withoutMoneyThereIsNoPlanWithTheListsThatWereTried() {
        Shell shell = Shell.in(folder, "grow", "Ombra", "--rounds", "1", "--budgets", "9");
        assertEquals(1, shell.code());
        assertTrue(shell.out().contains("No plan: round 1 is short 1.00 EUR (10.00 is needed, 9.00 is there at the most). That is said"
                + " of the lists that were tried") || shell.out().contains("There is no plan with the lists that were tried"), shell.out());
    }

    /** A boat is the cheapest way to five points, but the boats are the other side's. */
    @Test
    void whatBelongsToTheOtherSideIsSaidAndNeverComposed() {
        for (String taste : List.of("first Skiff", "likes Skiff")) {
            shelf("wish Boats\n  . " + taste + "\n");
            Shell shell = Shell.in(folder, "grow", "Ombra", "--rounds", "1-2", "--least", "60");
            assertEquals(0, shell.code(), shell.out());
            assertTrue(shell.lines().contains("Skiff, which is wished for, belongs to another side (rounds 1 and 2)."), shell.out());
            assertFalse(shell.lines().stream().anyMatch(line -> line.startsWith("  Composed") && line.contains("Skiff")), shell.out());
        }
        Shell other = Shell.in(folder, "grow", "Brack", "--rounds", "1", "--least", "60");
        assertTrue(other.lines().contains("  Composed: Company (Watch, Skiff)."), other.out());
    }
}
