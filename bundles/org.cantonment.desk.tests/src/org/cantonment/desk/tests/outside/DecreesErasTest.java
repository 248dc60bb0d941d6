package org.cantonment.desk.tests.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.eras.ChangeAnswer;
import org.cantonment.desk.eras.Changes;
import org.cantonment.desk.eras.EraAnswer;
import org.cantonment.desk.eras.ListEras;
import org.cantonment.desk.eras.Owned;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Severity;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.guest.Guests;
import org.cantonment.testkit.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A regiment of the line under the imperial decree of 18 February 1808, title I, articles 1 to 4, and under that of 13 April
 * 1815, each asked about the other's establishment; both in the public domain. A point is a man. That the list must hold a
 * regiment at all is a rule of this test: else striking it would be the least change.
 */
class DecreesErasTest {
    private static final String PEACE = "rules Peace over Line-Infantry\nlimit One-Regiment\n  . at least 1 of Regiment\n";
    // Decree of 1808: staff 50, four war battalions of six companies of 140, a depot of four.
    private static final long OLD = 50 + 4 * 6 * 140 + 4 * 140;
    // Decree of 1815: staff 25, minor staff 29, and battalions of 600; the books here ask for one at least.
    private static final long NEW = 25 + 29 + 600;

    private final Path folder = Project.file("bundles/org.cantonment.desk.tests/resources/outside/line-1808");
    private CampaignDesk desk;

    @BeforeEach
    void open() {
        desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
        desk.update(folder.resolve("peace.rules"), PEACE, CancelToken.NEVER);
    }

    private EraAnswer ask(String name, String points, String era) throws ListEras.Unclear {
        Path file = folder.resolve("lists").resolve(name + ".list");
        String text = desk.text(file).orElseThrow().replaceFirst(" in Of-", ", Peace in Of-")
                .replaceFirst("to [0-9]+ points", "to " + points + " points");
        desk.update(file, text, CancelToken.NEVER);
        ForceList list = desk.snapshot().meanings().lists().stream()
                .filter(one -> desk.snapshot().file(one).filter(file::equals).isPresent()).findFirst().orElseThrow();
        ListEras eras = ListEras.of(desk.snapshot().meanings(), new Guests(), list, Owned.unknown("Not asked."), 0,
                CancelToken.NEVER, Progress.SILENT);
        return eras.eras().stream().filter(one -> one.era().name().equals(era)).findFirst().orElseThrow();
    }

    @Test
    void theRegimentOf1808BecomesThatOf1815() throws ListEras.Unclear {
        EraAnswer answer = ask("regiment", "3970", "Of-1815");
        assertEquals(6, answer.verdict().findings(Severity.BREACH).size());
        Changes changes = answer.atLarge().orElseThrow();
        ChangeAnswer best = changes.best().orElseThrow();
        assertTrue(changes.proven());
        assertEquals(List.of(3970L, 654L), List.of(OLD, NEW));
        assertEquals(List.of(OLD + NEW, NEW), List.of(best.moved(), best.points()));
        // Out: 2 entries of the staff, 9 for each of 24 and of 4 companies. In: staff, minor staff, battalion.
        assertEquals(2 + 24 * 9 + 4 * 9 + 3, best.units());
        assertEquals("Take out Staff; Take out 4 War battalion; Take out Depot battalion; Add Staff to Regiment; "
                + "Add Minor staff to Regiment; Add Battalion to Regiment", best.words());
    }

    @Test
    void theRegimentOf1815BecomesThatOf1808() throws ListEras.Unclear {
        EraAnswer answer = ask("regiment-1815", "3970", "Of-1808");
        Changes changes = answer.atLarge().orElseThrow();
        ChangeAnswer best = changes.best().orElseThrow();
        assertTrue(changes.proven());
        long out = 25 + 29 + 2 * 600;
        assertEquals(List.of(out + OLD, OLD), List.of(best.moved(), best.points()));
        // Out: staff, minor staff, two battalions. In: what goes out the other way.
        assertEquals(4 + 2 + 24 * 9 + 4 * 9, best.units());
        assertTrue(best.verdict().legal());
    }
}
