package org.cantonment.notation.tests.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.finding.Severity;
import org.cantonment.notation.ide.CheckHelp;
import org.cantonment.notation.ide.Proposal;
import org.cantonment.rules.api.FindingKind;
import org.cantonment.rules.api.Parameter;
import org.cantonment.rules.guest.KnownCheck;
import org.cantonment.rules.guest.Origin;
import org.junit.jupiter.api.Test;

/** Help with the line that turns on a check of others. */
class CheckHelpTest {

    private static final List<KnownCheck> CHECKS = List.of(
            check("Painted-Share", "Painted share", Parameter.percent("Share", "Share", "How much.").presetTo(50),
                    Parameter.yesNo("Strict", "Strict", "Bases count, too.").presetTo(false),
                    Parameter.date("Since", "Since", "Painted since then.")),
            check("Ferry-Load", "Ferry load"));

    private static KnownCheck check(String name, String label, Parameter... parameters) {
        return new KnownCheck(name, label, "Looks after it.", List.of(parameters),
                List.of(new FindingKind("odd", Severity.BREACH, "Odd.")), Origin.installed("org.fen", "1.0.0", 1),
                Optional.empty());
    }

    /** The bar is the cursor. */
    private static List<Proposal> at(String line) {
        String text = "campaign Heron-Season\n" + line.replace("|", "") + "\n";
        return CheckHelp.proposals(text, text.indexOf('\n') + 1 + line.indexOf('|'), CHECKS);
    }

    private static List<String> offered(String line) {
        return at(line).stream().map(Proposal::text).toList();
    }

    @Test
    void behindCheckTheNamesOfChecksAtHand() {
        assertEquals(List.of("Painted-Share", "Ferry-Load"), offered("check |"));
        assertEquals(List.of("Ferry-Load"), offered("check fl|"));
        Proposal first = at("check Pain|").get(0);
        assertEquals(new Proposal("Painted-Share", "Painted share: Looks after it.", true, 28, 4), first);
        assertEquals(List.of(), offered("checks |"));
        assertEquals(List.of(), offered("player |"));
    }

    @Test
    void behindWithTheSettingsAtTheirPresets() {
        assertEquals(List.of("Share 50 percent", "Strict no", "Since"), offered("check Painted-Share with |"));
        assertEquals(List.of("Strict no", "Since"), offered("check Painted-Share caution with Share 60 percent, |"));
        assertEquals(List.of("Share 50 percent"), offered("check Painted-Share with Sh|"));
        assertEquals(List.of(), offered("check Ferry-Load with |"));
        assertEquals("Share: a number of percent from 0 to 100; 50 percent if nothing is written. How much.",
                at("check Painted-Share with |").get(0).description());
    }

    @Test
    void behindASettingItsPreset() {
        assertEquals(List.of("50 percent"), offered("check Painted-Share with Share |"));
        assertEquals(List.of("no"), offered("check Painted-Share with Share 60 percent, Strict |"));
        assertEquals(List.of(), offered("check Painted-Share with Since |"));
    }

    @Test
    void aNameOrASettingIsExplainedWhereThePointerRests() {
        String text = "campaign Heron-Season\ncheck Painted-Share with Share 60 percent\n";
        String about = CheckHelp.hover(text, text.indexOf("inted"), CHECKS);
        assertTrue(about.startsWith("Painted-Share (Painted share): Looks after it.\n  from plug-in org.fen 1.0.0\n"), about);
        assertEquals("Share (Share): a number of percent from 0 to 100; 50 percent if nothing is written. How much.",
                CheckHelp.hover(text, text.indexOf("hare 60"), CHECKS));
        assertEquals("", CheckHelp.hover(text, text.indexOf("percent"), CHECKS));
        assertEquals("", CheckHelp.hover(text, 3, CHECKS));
        assertEquals("", CheckHelp.hover(text, text.length(), CHECKS));
    }
}
