package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.text.TextChange;
import org.cantonment.notation.text.TextMend;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The organiser's word against what checks of others say: offered on their breaches, and kept to what it says. */
class CheckDispensationTest {
    private static final String FIRST = "list by Ombra round 1\nCausey-Squadron\n  . Staff\n  . 2 Crank-Troop\n";

    @TempDir
    Path folder;
    private final Guests guests = new Guests();
    private Path campaign;
    private Path list;

    @BeforeEach
    void write() {
        SmallWar.into(folder);
        campaign = folder.resolve("heron.campaign");
        list = folder.resolve("lists/ombra-2.list");
        Origin origin = Origin.installed("org.fen.checks", "1.2.0", 1);
        guests.enter(new TestCheck.PaintedShare(), origin);
        guests.enter(new TestCheck.NoRepeat(), origin);
    }

    private CampaignDesk open(String... lines) {
        Folders.write(campaign, SmallWar.CAMPAIGN + String.join("\n", lines) + "\n");
        return CampaignDesk.open(DeskScope.all(folder), guests, CancelToken.NEVER, Progress.SILENT);
    }

    private List<String> said(CampaignDesk desk) {
        return desk.snapshot().findings(list).stream().filter(finding -> finding.code().startsWith("check."))
                .map(finding -> finding.severity() + " " + finding.message()).toList();
    }

    private static LocatedFinding breach(CampaignDesk desk, Path file) {
        return desk.snapshot().findings(file).stream().filter(finding -> finding.code().startsWith("check."))
                .findFirst().orElseThrow();
    }

    private static TextMend last(LocatedFinding finding) {
        return finding.mends().get(finding.mends().size() - 1);
    }

    @Test
    void aBreachOfAListCarriesItAndItSaysWhoAndWhy() {
        CampaignDesk desk = open("check Painted-Share with Share 60 percent");
        LocatedFinding breach = breach(desk, list);
        assertEquals(List.of("BREACH 2 of 4 pieces are painted."), said(desk));
        TextMend excuse = last(breach);
        assertEquals("Excuse Ombra from Painted-Share in round 2, in the campaign.", excuse.label());
        assertEquals(Optional.of(campaign), excuse.elsewhere());
        String after = TextChange.apply(desk.text(campaign).orElseThrow(), excuse.changes());
        assertTrue(after.endsWith("\nexcuse Ombra from Painted-Share in round 2 by Who \"\"\n"), after);
        desk.update(campaign, after.replace("Who \"\"", "Quill \"Moved house\""), CancelToken.NEVER);
        assertEquals(List.of("NOTE 2 of 4 pieces are painted. Excused by Quill: Moved house."), said(desk));
        assertEquals(List.of(), desk.snapshot().findings(campaign));
        assertEquals(List.of(), breach(desk, list).mends());
        desk.update(campaign, SmallWar.CAMPAIGN + "check Painted-Share with Share 60 percent\n", CancelToken.NEVER);
        assertEquals(breach, breach(desk, list));
    }

    @Test
    void itHoldsForItsPlayerAndItsRoundsWhicheverLineTurnsTheCheckOn() {
        String one = "check Painted-Share with Share 60 percent to round 1";
        String two = "check Painted-Share caution with Share 60 percent from round 2";
        String note = "NOTE 2 of 4 pieces are painted. Excused by Nib.";
        String caution = "CAUTION 2 of 4 pieces are painted.";
        assertEquals(List.of(note), said(open(one, two, "excuse Ombra from Painted-Share by Nib")));
        assertEquals(List.of(note), said(open(one, two, "excuse Ombra from Painted-Share from round 2 by Nib")));
        assertEquals(List.of(caution), said(open(one, two, "excuse Ombra from Painted-Share to round 1 by Nib")));
        assertEquals(List.of(caution), said(open(one, two, "excuse Brack from Painted-Share by Nib")));
        assertEquals(List.of(caution), said(open(one, two, "check No-Repeat", "excuse Ombra from No-Repeat by Nib")));
    }

    @Test
    void aFindingAtAUnitIsExcusedThereAlone() {
        Folders.write(folder.resolve("lists/ombra-1.list"), FIRST);
        CampaignDesk desk = open("check No-Repeat with But Tread-Troop");
        LocatedFinding breach = breach(desk, list);
        assertEquals("Staff was there last time.", breach.message());
        assertEquals("Excuse Ombra from No-Repeat at Staff in round 2, in the campaign.", last(breach).label());
        assertEquals(Optional.empty(), breach.mends().get(0).elsewhere(), "what the check itself offers comes first");
        String after = TextChange.apply(desk.text(campaign).orElseThrow(), last(breach).changes());
        assertEquals(List.of("BREACH Crank-Troop was there last time.", "NOTE Staff was there last time. Excused by Nib."),
                said(desk(after.replace("Who \"\"", "Nib"))).stream().sorted().toList());
    }

    private CampaignDesk desk(String text) {
        Folders.write(campaign, text);
        return CampaignDesk.open(DeskScope.all(folder), guests, CancelToken.NEVER, Progress.SILENT);
    }

    @Test
    void aRuleOfTheChecksNameIsThenWrittenWithItsBook() {
        Folders.write(folder.resolve("books/winter.rules"), SmallWar.LAYER + "limit Painted-Share\n  . at most 0 of Staff\n");
        CampaignDesk desk = open("check Painted-Share with Share 60 percent");
        List<String> offered = desk.snapshot().findings(list).stream()
                .filter(finding -> finding.severity() == Severity.BREACH).map(finding -> last(finding).label()).toList();
        assertEquals(List.of("Excuse Ombra from Painted-Share in round 2, in the campaign.",
                "Excuse Ombra from Winter/Painted-Share at Staff in round 2, in the campaign."), offered);
    }

    @Test
    void aListThatOurOwnRulesRefuseCarriesBoth() {
        Folders.write(list, SmallWar.LIST_LEGAL.replace("  . Command: Staff\n", ""));
        CampaignDesk desk = open("check Painted-Share with Share 60 percent");
        List<String> offered = desk.snapshot().findings(list).stream()
                .filter(finding -> finding.severity() == Severity.BREACH).map(finding -> last(finding).label()).toList();
        assertEquals(List.of("Excuse Ombra from Painted-Share in round 2, in the campaign.",
                "Excuse Ombra from Causey-Squadron in round 2, in the campaign."), offered);
    }
}
