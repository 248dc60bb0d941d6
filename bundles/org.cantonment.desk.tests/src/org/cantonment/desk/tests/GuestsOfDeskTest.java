package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.text.TextChange;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A campaign turns on checks of others, and a desk asks them of every list that they concern. */
class GuestsOfDeskTest {
    private static final Origin ORIGIN = Origin.installed("org.fen.checks", "1.2.0", 1);
    private static final String OMBRA_3 = """
            list by Ombra round 1
            Causey-Squadron
              . Staff
              . 2 Crank-Troop
            """;

    @TempDir
    Path folder;
    private final Guests guests = new Guests();

    @BeforeEach
    void write() {
        SmallWar.into(folder);
    }

    private Path turnOn(String... lines) throws IOException {
        Path campaign = folder.resolve("heron.campaign");
        Files.writeString(campaign, SmallWar.CAMPAIGN + String.join("\n", lines) + "\n");
        return campaign;
    }

    private CampaignDesk open() {
        return CampaignDesk.open(DeskScope.all(folder), guests, CancelToken.NEVER, Progress.SILENT);
    }

    private static List<String> checks(DeskSnapshot snapshot) {
        return snapshot.findings().stream().filter(f -> f.code().startsWith("check."))
                .map(f -> f.file().getFileName() + ":" + f.line() + " " + f.severity() + " " + f.code() + ": " + f.message())
                .toList();
    }

    @Test
    void everyListOfTheCampaignIsAskedAboutWithTheSettingsOfTheLine() throws IOException {
        guests.enter(new TestCheck.PaintedShare(), ORIGIN);
        turnOn("check Painted-Share with Share 50 percent from round 2");
        assertEquals(List.of(), checks(open().snapshot()));
        turnOn("check Painted-Share caution with Share 51 percent from round 2");
        assertEquals(List.of("ombra-2.list:1 CAUTION check.painted-share.too-little: 2 of 4 pieces are painted."),
                checks(open().snapshot()));
        turnOn("check Painted-Share with Share 51 percent from round 3");
        assertEquals(List.of(), checks(open().snapshot()));
    }

    @Test
    void aFindingHasItsRuleItsMendAndTheListBefore() throws IOException {
        guests.enter(new TestCheck.NoRepeat(), ORIGIN);
        Path campaign = turnOn("check No-Repeat with But Tread-Troop");
        Files.writeString(folder.resolve("lists/ombra-1.list"), OMBRA_3);
        Path list = folder.resolve("lists/ombra-2.list");
        List<LocatedFinding> found = open().snapshot().findings(list).stream()
                .filter(f -> f.code().startsWith("check.")).toList();
        assertEquals(List.of("Staff was there last time.", "Crank-Troop was there last time."),
                found.stream().map(LocatedFinding::message).toList());
        LocatedFinding finding = found.get(1);
        assertEquals(List.of(5, Severity.BREACH, campaign), List.of(finding.line(), finding.severity(),
                finding.rule().orElseThrow().file()));
        assertEquals(Files.readAllLines(campaign).size(), finding.rule().orElseThrow().line());
        assertEquals(SmallWar.LIST_LEGAL.replace("  . Crank-Troop\n", ""),
                TextChange.apply(SmallWar.LIST_LEGAL, finding.mends().get(0).changes()));
    }

    @Test
    void aListIsAskedAboutAgainOnlyIfSomethingItUsesChanged() throws IOException {
        TestCheck always = new TestCheck.Always("Always");
        guests.enter(always, ORIGIN);
        turnOn("check Always");
        CampaignDesk desk = open();
        assertEquals(List.of("brack-2.list:1 CAUTION check.always.here: Here is Brack, round 2, 90 points.",
                "ombra-2.list:1 CAUTION check.always.here: Here is Ombra, round 2, 85 points."), checks(desk.snapshot()));
        int before = always.asked.get();
        desk.judge(CancelToken.NEVER);
        desk.update(folder.resolve("lists/dream.list"), SmallWar.LIST_FREE.replace("120", "130"), CancelToken.NEVER);
        assertEquals(before, always.asked.get());
        desk.update(folder.resolve("ombra.shelf"), SmallWar.SHELF.replace("2 painted", "3 painted"), CancelToken.NEVER);
        assertTrue(always.asked.get() > before, "the shelf is one's own business, but a check may look at it");
        int judged = desk.judgements();
        int then = always.asked.get();
        DeskSnapshot now = desk.update(folder.resolve("lists/ombra-2.list"), SmallWar.LIST_LEGAL.replace(", Mast", ""),
                CancelToken.NEVER);
        assertEquals(1, desk.judgements() - judged);
        assertTrue(always.asked.get() - then <= 2, "more than one list was asked about");
        assertTrue(checks(now).get(1).endsWith("82 points."), checks(now)::toString);
    }

    @Test
    void checksComeAndGoWhileADeskIsOpen() throws IOException {
        turnOn("check Always");
        CampaignDesk desk = open();
        int line = Files.readAllLines(folder.resolve("heron.campaign")).size();
        assertEquals(List.of("heron.campaign:" + line + " CAUTION check.missing: No check called 'Always' is installed here,"
                + " so nothing is judged by it."), checks(desk.snapshot()));
        int judged = desk.judgements();
        TestCheck always = new TestCheck.Always("Always");
        guests.enter(always, ORIGIN);
        assertEquals(2, checks(desk.judge(CancelToken.NEVER)).size());
        guests.leave(always);
        assertEquals(1, checks(desk.judge(CancelToken.NEVER)).size());
        assertEquals(judged, desk.judgements(), "our own judge was asked again");
    }

    @Test
    void aMisspeltNameOrSettingIsMendedInTheLine() throws IOException {
        guests.enter(new TestCheck.PaintedShare(), ORIGIN);
        for (String line : List.of("check Painted-Shaer with Share 60 percent from round 2",
                "check Painted-Share with Shaer 60 percent from round 2")) {
            Path campaign = turnOn(line);
            LocatedFinding finding = open().snapshot().findings(campaign).stream()
                    .filter(f -> f.code().startsWith("check.")).findFirst().orElseThrow();
            String mended = TextChange.apply(Files.readString(campaign), finding.mends().get(0).changes());
            assertTrue(mended.endsWith("\ncheck Painted-Share with Share 60 percent from round 2\n"), mended);
        }
        Path campaign = turnOn("check Painted-Share with Share 101 percent from round 2");
        LocatedFinding finding = open().snapshot().findings(campaign).stream()
                .filter(f -> f.code().equals("check.setting")).findFirst().orElseThrow();
        assertEquals("Share 101 percent", Files.readString(campaign).substring(finding.offset(),
                finding.offset() + finding.length()));
        assertTrue(TextChange.apply(Files.readString(campaign), finding.mends().get(0).changes())
                .contains("with Share 100 percent from"));
    }

    @Test
    void aFaultStandsAtTheLineOnceAndNothingOfThatCheckStands() throws IOException {
        guests.enter(new TestCheck.Failing(), ORIGIN);
        guests.enter(new TestCheck.Always("Always"), ORIGIN);
        turnOn("check Failing", "check Always");
        int line = Files.readAllLines(folder.resolve("heron.campaign")).size() - 1;
        List<String> all = checks(open().snapshot());
        assertEquals(3, all.size(), all::toString);
        assertEquals("heron.campaign:" + line + " CAUTION check.fault: The check Failing of plug-in org.fen.checks 1.2.0 failed:"
                + " java.lang.IllegalStateException: no river. It is not asked again before the next start, and no list is"
                + " judged by it.", all.get(0));
    }

    @Test
    void whoAsksAboutAListAloneHearsOfItAllTheSame() throws IOException {
        turnOn("check Always from round 2", "check Never from round 3");
        Path list = folder.resolve("lists/ombra-2.list");
        CampaignDesk alone = CampaignDesk.open(DeskScope.only(folder, Set.of(list)), guests, CancelToken.NEVER,
                Progress.SILENT);
        assertEquals(List.of("ombra-2.list:1 CAUTION check.missing: No check called 'Always' is installed here, so nothing is"
                + " judged by it."), checks(alone.snapshot()));
        guests.enter(new TestCheck.PaintedShare(), ORIGIN);
        turnOn("check Painted-Share with Share 60 percent");
        assertEquals(List.of("ombra-2.list:1 BREACH check.painted-share.too-little: 2 of 4 pieces are painted."),
                checks(CampaignDesk.open(DeskScope.only(folder, Set.of(list)), guests, CancelToken.NEVER,
                        Progress.SILENT).snapshot()), "the shelf is read though only a list is asked about");
    }
}
