package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.text.TextChange;
import org.cantonment.notation.text.TextMend;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The organiser's word is offered on every breach that a rule gives, does what it says, and can be taken back. */
class DispensationTest {
    private static final String RULES = """
            rules Pond
            side Weir
            side Fen
            era Reed-Year
            era Dyke-War after Reed-Year
            era Long-Thaw after Dyke-War
            kind Foot
            kind Guns
            unit Staff
              . strength 1 for 5 points
            unit Line
              . is Foot
              . strength 3 for 6 points
              . option Bell, at most 1, for 1 point, one of Front
              . option Flag for 1 point, one of Front
              . option Horn for 1 point, needs Flag
              . option Mast for 1 point from Long-Thaw
            unit Gun
              . is Guns
              . strength 1 to 4 for 4 points each
            unit Tender
              . strength 1 to 4 for 2 points each
            unit Early
              . is Foot
              . strength 1 for 3 points
              . available to Reed-Year
            unit Late
              . is Foot
              . strength 1 for 3 points
              . available from Long-Thaw
            unit Middle
              . is Foot
              . strength 1 for 3 points
              . available in Reed-Year, Long-Thaw
            unit Sometimes
              . is Foot
              . strength 1 for 3 points
              . available in rounds 8 to 9
            unit Punt
              . is Foot
              . side Fen
              . strength 1 for 3 points
            unit Banned
              . is Foot
              . strength 1 for 3 points
            unit Nowhere
              . strength 1 for 3 points
            unit Pet
              . strength 1 for 1 point
            unit Mascot
              . strength 1 for 1 point
            unit Sledge
              . strength 1 to 4 for 1 point each
            unit Skater
              . strength 1 to 4 for 1 point each
            formation Company
              . billet Command 1 of Staff
              . billet Ranks 2 to 4 of Foot
            support Battery at most 2 of Gun
            support Wagons at most 3 of Tender, Pet, Mascot, Sledge, Skater
            limit Few-Guns
              . at most 1 of Gun
            limit Eyes
              . taking Pet needs at least 1 of Mascot
              . taking Mascot excludes Gun
            limit Pairs
              . taking Tender joins Gun
            limit Teams
              . taking Sledge matches Skater
            limit Order
              . first Company before 2 Tender
            """;
    private static final String HOUSE = """
            rules House over Pond
            forbid Banned
            """;
    private static final String CAMPAIGN = """
            campaign Season
            plays Pond, House
            player Ombra
            player Nib "Nib"
              . side Weir
            player Quill
            show shelves to Ombra
            round 1
              . era Dyke-War
              . limit 500 points
            """;

    @TempDir
    Path folder;
    private Path campaign;
    private Path list;

    @BeforeEach
    void write() {
        campaign = folder.resolve("season.campaign");
        list = folder.resolve("nib.list");
        Folders.write(folder.resolve("pond.rules"), RULES);
        Folders.write(folder.resolve("house.rules"), HOUSE);
        Folders.write(campaign, CAMPAIGN);
    }

    private CampaignDesk open(String entries) {
        Folders.write(list, "list by Nib round 1\n" + entries.replace("/", "\n") + "\n");
        return CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
    }

    private static String company(String... ranks) {
        return "Company/  . Staff/  . " + String.join("/  . ", ranks);
    }

    private LocatedFinding find(CampaignDesk desk, String code) {
        return desk.snapshot().findings(list).stream().filter(finding -> finding.code().equals(code)).findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not among " + desk.snapshot().findings(list)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "era.not-yet; Company/  . Staff/  . Line/  . Line/  . Late; Late",
        "era.no-longer; Company/  . Staff/  . Line/  . Line/  . Early; Early",
        "era.only-in; Company/  . Staff/  . Line/  . Line/  . Middle; Middle",
        "unit.not-now; Company/  . Staff/  . Line/  . Line/  . Sometimes; Sometimes",
        "unit.forbidden; Company/  . Staff/  . Line/  . Line/  . Banned; Banned",
        "unit.wrong-side; Company/  . Staff/  . Line/  . Line/  . Punt; Punt",
        "unit.loose; Nowhere; Nowhere",
        "strength.not-offered; Company/  . Staff/  . Line of 9/  . Line; Line",
        "option.not-now; Company/  . Staff/  . Line, Mast/  . Line; Line",
        "option.too-many; Company/  . Staff/  . Line, 2 Bell/  . Line; Line",
        "option.one-of; Company/  . Staff/  . Line, Bell, Flag/  . Line; Line",
        "option.needs; Company/  . Staff/  . Line, Horn/  . Line; Line",
        "billet.empty; Company/  . Line/  . Line; Company",
        "billet.short; Company/  . Staff/  . Line; Company",
        "billet.full; Company/  . Staff/  . 5 Line; Company at Line",
        "billet.wrong-kind; Company/  . Ranks: Staff/  . Staff/  . Line/  . Line; Company at Staff",
        "support.full; support/  . 3 Gun; Battery at Gun",
        "support.wrong-kind; support/  . Nowhere; Nowhere",
        "limit.at-most; support/  . 2 Gun; Few-Guns at Gun",
        "taking.needs; support/  . Pet; Eyes at Pet",
        "taking.excludes; support/  . Mascot/  . Gun; Eyes at Gun",
        "taking.joins; support/  . Tender; Pairs at Tender",
        "taking.matches; support/  . Sledge of 2/  . Skater of 3; Teams at Sledge",
        "before.missing; support/  . 2 Tender; Order at Tender",
    })
    void everyBreachOfARuleCarriesIt(String code, String entries, String from) {
        assertMended(open(entries), code, from);
    }

    @Test
    void soDoLimitsThatAskForMoreAndSupportsThatLack() {
        Folders.write(folder.resolve("pond.rules"), RULES.replace("support Battery at most 2", "support Battery 2 to 3")
                .replace("limit Few-Guns\n  . at most 1 of Gun", "limit Few-Guns\n  . at least 4 of Gun"));
        CampaignDesk desk = open(company("Line", "Line") + "/support/  . Gun");
        assertMended(desk, "limit.at-least", "Few-Guns");
        assertMended(desk, "support.short", "Battery");
    }

    @Test
    void soDoesTheListBefore() {
        Folders.write(folder.resolve("pond.rules"), RULES + "limit Old-Friends\n  . keep the list before, change at most"
                + " 1 unit\n");
        Folders.write(campaign, CAMPAIGN.replace("round 1", "round 2\n  . era Dyke-War\nround 1"));
        Folders.write(folder.resolve("nib-2.list"), "list by Nib round 2\nCompany\n  . Staff\n  . 2 Line\n");
        list = folder.resolve("nib-1.list");
        Folders.write(list, "list by Nib round 1\nsupport\n  . 2 Gun\n  . Pet\n");
        list = folder.resolve("nib-2.list");
        assertMended(CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT), "keep.too-many", "Old-Friends");
    }

    private void assertMended(CampaignDesk desk, String code, String from) {
        LocatedFinding breach = find(desk, code);
        assertEquals(Severity.BREACH, breach.severity());
        List<TextMend> mends = breach.mends();
        TextMend excuse = mends.get(mends.size() - 1);
        assertEquals(Optional.of(campaign), excuse.elsewhere());
        assertTrue(mends.subList(0, mends.size() - 1).stream().allMatch(mend -> mend.elsewhere().isEmpty()));
        String round = code.equals("keep.too-many") ? "2" : "1";
        assertEquals("Excuse Nib from " + from + " in round " + round + ", in the campaign.", excuse.label());
        String before = desk.text(campaign).orElseThrow();
        String after = TextChange.apply(before, excuse.changes());
        assertEquals(before + "excuse Nib from " + from + " in round " + round + " by Ombra \"\"\n", after);
        desk.update(campaign, after.replace("\"\"", "\"Birthday\""), CancelToken.NEVER);
        LocatedFinding note = find(desk, code);
        assertEquals(Severity.NOTE, note.severity());
        assertTrue(note.message().endsWith(" Excused by Ombra: Birthday."), note.message());
        assertEquals(List.of(), desk.snapshot().findings(campaign));
        desk.update(campaign, before, CancelToken.NEVER);
        assertEquals(breach, find(desk, code));
    }

    @Test
    void soDoesTheLimitOfPoints() {
        String campaignText = CAMPAIGN.replace("500", "3");
        Folders.write(campaign, campaignText);
        assertMended(open(company("Line", "Line")), "points.over", "the limit");
        assertMended(open("contingent Fens under Pond to 5 points/  . Line"), "points.contingent-over", "the limit");
        for (String line : List.of("excuse Quill from the limit by Ombra", "excuse Nib from the limit in round 2 by Ombra")) {
            Folders.write(campaign, campaignText + line + "\n");
            assertEquals(Severity.BREACH, find(open(company("Line", "Line")), "points.over").severity(), line);
        }
    }

    @Test
    void whatNoRuleSaysCannotBeExcused() {
        CampaignDesk typo = open(company("Line", "Lyne"));
        assertTrue(find(typo, "name.unknown").mends().stream().allMatch(mend -> mend.elsewhere().isEmpty()));
    }

    @Test
    void aListOfNoRoundCarriesNone() {
        Folders.write(list, "list by Nib\nsupport\n  . Pet\n");
        CampaignDesk desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
        assertFalse(find(desk, "taking.needs").mends().stream().anyMatch(mend -> mend.elsewhere().isPresent()));
    }

    @Test
    void itStandsBehindTheLastOneAndIsByTheSameOrganiser() {
        Folders.write(campaign, CAMPAIGN.replace("round 1\n", "excuse Quill from Eyes by Quill \"So it is\"\n"
                + "  . note \"well\"\nround 1\n").replace("\n", "\r\n"));
        CampaignDesk desk = open("support/  . Pet");
        TextMend excuse = last(find(desk, "taking.needs").mends());
        String after = TextChange.apply(desk.text(campaign).orElseThrow(), excuse.changes());
        assertTrue(after.contains("  . note \"well\"\r\nexcuse Nib from Eyes at Pet in round 1 by Quill \"\"\r\nround 1\r\n"),
                after);
    }

    @Test
    void whereNobodyIsKnownToRunTheCampaignThereIsAPlaceToSayWho() {
        Folders.write(campaign, CAMPAIGN.replace("show shelves to Ombra\n", "").stripTrailing());
        CampaignDesk desk = open("support/  . Pet");
        String after = TextChange.apply(desk.text(campaign).orElseThrow(), last(find(desk, "taking.needs").mends()).changes());
        assertTrue(after.endsWith("\n  . limit 500 points\nexcuse Nib from Eyes at Pet in round 1 by Who \"\"\n"), after);
        desk.update(campaign, after, CancelToken.NEVER);
        assertEquals(Severity.BREACH, find(desk, "taking.needs").severity());
        assertEquals("name.unknown", desk.snapshot().findings(campaign).get(0).code());
    }

    @Test
    void aNameThatTwoBooksHaveIsWrittenWithItsBook() {
        Folders.write(folder.resolve("other.rules"), "rules Other\nlimit Eyes\n  . at most 1 of Pet\nunit Pet\n"
                + "  . strength 1 for 1 point\n");
        Folders.write(folder.resolve("pond.rules"), RULES);
        CampaignDesk desk = open("support/  . Pond/Pet".replace("Pond/Pet", "Pond|Pet"));
        desk.update(list, desk.text(list).orElseThrow().replace('|', '/'), CancelToken.NEVER);
        TextMend excuse = last(find(desk, "taking.needs").mends());
        assertTrue(excuse.changes().get(0).text().startsWith("excuse Nib from Pond/Eyes at Pond/Pet in round 1"));
        desk.update(campaign, TextChange.apply(CAMPAIGN, excuse.changes()), CancelToken.NEVER);
        assertEquals(Severity.NOTE, find(desk, "taking.needs").severity());
    }

    private static <T> T last(List<T> all) {
        return all.get(all.size() - 1);
    }
}
