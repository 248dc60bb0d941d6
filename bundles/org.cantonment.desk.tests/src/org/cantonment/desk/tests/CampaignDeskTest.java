package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.notation.text.TextChange;
import org.cantonment.testkit.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A desk reads, judges and places; and does again only what a change has touched. */
class CampaignDeskTest {
    @TempDir
    Path folder;
    private CampaignDesk desk;

    @BeforeEach
    void open() {
        SmallWar.into(folder);
        desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
    }

    @Test
    void theBreachStandsWhereItIs() {
        List<LocatedFinding> findings = desk.snapshot().findings();
        assertEquals(1, findings.size(), findings::toString);
        LocatedFinding finding = findings.get(0);
        assertEquals("lists/brack-2.list", name(finding.file()));
        assertEquals("limit.at-most", finding.code());
        assertEquals(4, finding.line());
        assertEquals(7, finding.column());
        assertEquals("Tread-Troop", SmallWar.LIST_BROKEN.substring(finding.offset(),
                finding.offset() + finding.length()));
        LocatedFinding.RulePlace rule = finding.rule().orElseThrow();
        assertEquals("books/winter.rules", name(rule.file()));
        assertEquals(3, rule.line());
    }

    @Test
    void theFirstMendMends() {
        LocatedFinding finding = desk.snapshot().findings().get(0);
        String mended = TextChange.apply(SmallWar.LIST_BROKEN, finding.mends().get(0).changes());
        assertFalse(desk.update(finding.file(), mended, CancelToken.NEVER).findings(finding.file()).stream()
                .anyMatch(f -> f.code().equals("limit.at-most")), mended);
    }

    @Test
    void anEditOfOneListJudgesThatListAlone() {
        int before = desk.judgements();
        desk.update(folder.resolve("lists/ombra-2.list"),
                SmallWar.LIST_LEGAL.replace("Crank-Troop", "2 Crank-Troop"), CancelToken.NEVER);
        assertEquals(1, desk.judgements() - before);
    }

    @Test
    void aRemarkJudgesNothing() {
        int before = desk.judgements();
        DeskSnapshot now = desk.update(folder.resolve("books/lake.rules"), "# a remark\n" + SmallWar.RULES,
                CancelToken.NEVER);
        assertEquals(0, desk.judgements() - before);
        assertEquals(1, now.findings().size());
    }

    @Test
    void aRuleThatMovesIsPointedAtWhereItStandsNow() {
        DeskSnapshot now = desk.update(folder.resolve("books/winter.rules"),
                SmallWar.LAYER.replace("tighten", "# one\n# two\ntighten"), CancelToken.NEVER);
        assertEquals(5, now.findings().get(0).rule().orElseThrow().line());
    }

    @Test
    void anEditOfALayerJudgesOnlyTheListsUnderIt() {
        int before = desk.judgements();
        DeskSnapshot now = desk.update(folder.resolve("books/winter.rules"),
                SmallWar.LAYER.replace("at most 1", "at most 2"), CancelToken.NEVER);
        // The third list is under the Lake Book alone.
        assertEquals(2, desk.judgements() - before);
        assertEquals(List.of(), codes(now));
    }

    @Test
    void anEditOfARuleSetReadsNoListAgain() {
        Object list = desk.snapshot().meanings().lists().get(0);
        DeskSnapshot now = desk.update(folder.resolve("books/lake.rules"),
                SmallWar.RULES.replace("for 24 points", "for 25 points"), CancelToken.NEVER);
        assertSame(list, now.meanings().lists().get(0));
    }

    @Test
    void anEditOfTheRoundsLimitIsSeenByItsLists() {
        DeskSnapshot now = desk.update(folder.resolve("heron.campaign"),
                SmallWar.CAMPAIGN.replace("limit 100 points", "limit 60 points"), CancelToken.NEVER);
        assertTrue(codes(now).contains("points.over"), () -> codes(now).toString());
        assertEquals(60, now.judged(folder.resolve("lists/ombra-2.list")).orElseThrow().about().situation().points()
                .getAsInt());
    }

    @Test
    void theListBeforeCounts() {
        desk.update(folder.resolve("lists/ombra-1.list"), "list by Ombra round 1\nCausey-Squadron\n  . Staff\n"
                + "  . 2 Crank-Troop\n", CancelToken.NEVER);
        var now = desk.snapshot().judged(folder.resolve("lists/ombra-2.list")).orElseThrow();
        assertEquals(1, now.about().situation().before().orElseThrow().round().getAsInt());
        assertEquals(2, now.about().situation().used().entrySet().stream()
                .filter(e -> e.getKey().name().equals("Crank-Troop")).findFirst().orElseThrow().getValue());
    }

    @Test
    void aSnapshotStaysAsItWas() {
        DeskSnapshot before = desk.snapshot();
        desk.remove(folder.resolve("lists/brack-2.list"), CancelToken.NEVER);
        assertEquals(1, before.findings().size());
        assertEquals(0, desk.snapshot().findings().size());
        assertTrue(desk.snapshot().number() > before.number());
    }

    @Test
    void whatIsCancelledIsDoneTheNextTime() {
        Path file = folder.resolve("lists/brack-2.list");
        String mended = SmallWar.LIST_BROKEN.replace("2 Tread-Troop", "Tread-Troop");
        AtomicInteger asked = new AtomicInteger();
        assertThrows(Cancelled.class, () -> desk.update(file, mended, () -> asked.incrementAndGet() > 3));
        assertEquals(mended, desk.text(file).orElseThrow());
        assertEquals(List.of("billet.short"), codes(desk.reload(CancelToken.NEVER, Progress.SILENT)),
                "an open text stands for the one on the disk");
    }

    @Test
    void aNameThatComesIsFoundByThoseWhoAskedForIt() {
        desk.remove(folder.resolve("books/lake.rules"), CancelToken.NEVER);
        assertTrue(codes(desk.snapshot()).contains("name.unknown"));
        DeskSnapshot again = desk.update(folder.resolve("books/lake.rules"), SmallWar.RULES, CancelToken.NEVER);
        assertEquals(List.of("limit.at-most"), codes(again));
    }

    @Test
    void theSameListTwiceIsTold() {
        DeskSnapshot now = desk.update(folder.resolve("lists/ombra-2b.list"), SmallWar.LIST_LEGAL, CancelToken.NEVER);
        List<LocatedFinding> twice = now.findings().stream().filter(f -> f.code().equals("book.twice")).toList();
        assertEquals(List.of("lists/ombra-2.list", "lists/ombra-2b.list"),
                twice.stream().map(f -> name(f.file())).toList());
        assertTrue(twice.get(0).message().contains("ombra-2b.list"), twice.get(0).message());
    }

    @Test
    void filesOnTheDiskComeChangeAndGo() throws IOException {
        Files.delete(folder.resolve("lists/brack-2.list"));
        Files.writeString(folder.resolve("lists/nib-2.list"), "list by Nib round 2\nCausey-Squadron\n  . Staff\n");
        DeskSnapshot now = desk.reload(CancelToken.NEVER, Progress.SILENT);
        assertEquals(Set.of("billet.empty"), Set.copyOf(codes(now)));
        assertFalse(now.files().contains(folder.resolve("lists/brack-2.list")));
    }

    @Test
    void aFileLetGoIsTakenFromTheDisk() {
        Path file = folder.resolve("lists/brack-2.list");
        desk.update(file, "", CancelToken.NEVER);
        assertEquals(SmallWar.LIST_BROKEN, desk.release(file, CancelToken.NEVER).files().contains(file)
                ? desk.text(file).orElseThrow() : "");
    }

    @Test
    void aMarkAndOtherLineEndsChangeNothing() throws IOException {
        for (String name : SmallWar.files().keySet()) {
            Files.writeString(folder.resolve(name), "\uFEFF" + SmallWar.files().get(name).replace("\n", "\r\n"));
        }
        DeskSnapshot now = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT).snapshot();
        LocatedFinding finding = now.findings().get(0);
        assertEquals(1, now.findings().size());
        assertEquals(4, finding.line());
        assertEquals(7, finding.column());
    }

    @Test
    void bytesThatAreNoTextAreTold() throws IOException {
        byte[] bytes = SmallWar.LIST_LEGAL.replace("The Reds", "The R?ds").getBytes(StandardCharsets.ISO_8859_1);
        bytes[new String(bytes, StandardCharsets.ISO_8859_1).indexOf('?')] = (byte) 0xEA;
        Files.write(folder.resolve("lists/ombra-2.list"), bytes);
        DeskSnapshot now = desk.reload(CancelToken.NEVER, Progress.SILENT);
        LocatedFinding finding = now.findings(folder.resolve("lists/ombra-2.list")).get(0);
        assertEquals("form.bytes", finding.code());
        assertEquals(4, finding.line());
        assertTrue(now.judged(folder.resolve("lists/ombra-2.list")).orElseThrow().verdict().orElseThrow().legal(),
                "the rest was read");
    }

    @Test
    void oneFileIsJudgedInTheLightOfItsFolder() {
        Path file = folder.resolve("lists/brack-2.list");
        CampaignDesk one = CampaignDesk.open(DeskScope.only(folder, Set.of(file)), CancelToken.NEVER, Progress.SILENT);
        assertEquals(List.of(file), one.snapshot().files());
        assertEquals(1, one.judgements());
        assertEquals(desk.snapshot().findings(), one.snapshot().findings());
    }

    @Test
    void everyListOfTheExampleIsJudgedAloneAsInItsFolder() {
        Path example = Project.file("examples/lake-war");
        DeskSnapshot whole = CampaignDesk.open(example, CancelToken.NEVER, Progress.SILENT).snapshot();
        int lists = 0;
        for (Path file : whole.files()) {
            if (file.toString().endsWith(".list")) {
                lists++;
                DeskSnapshot alone = CampaignDesk.open(DeskScope.only(example, Set.of(file)), CancelToken.NEVER,
                        Progress.SILENT).snapshot();
                assertEquals(whole.findings(file), alone.findings(file));
                assertEquals(whole.judged(file).orElseThrow().verdict(), alone.judged(file).orElseThrow().verdict());
            }
        }
        assertTrue(lists > 10, "the example is there");
    }

    private List<String> codes(DeskSnapshot snapshot) {
        List<String> codes = new ArrayList<>();
        snapshot.findings().forEach(f -> codes.add(f.code()));
        return codes;
    }

    private String name(Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }
}
