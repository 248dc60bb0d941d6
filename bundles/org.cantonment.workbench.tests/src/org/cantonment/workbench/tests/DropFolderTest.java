package org.cantonment.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

import org.cantonment.desk.checks.ChecksFolder;
import org.cantonment.rules.api.RuleCheck;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Refusal;
import org.cantonment.workbench.guests.GuestHouse;
import org.cantonment.workbench.tests.driver.Campaign;
import org.cantonment.workbench.tests.driver.OpenBook;
import org.cantonment.workbench.tests.driver.PluginJar;
import org.cantonment.workbench.tests.driver.Screen;
import org.cantonment.workbench.tests.visitor.FordCheck;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceRegistration;

/** Jars that are dropped into the folder of checks while the workbench runs. */
class DropFolderTest {

    private static final String PLUGIN = "org.fen.fords";

    private final Path folder = ChecksFolder.path();
    private final Guests guests = GuestHouse.instance().guests();
    private Campaign campaign;
    private OpenBook list;
    private OpenBook season;

    @BeforeEach
    void turnOn() throws IOException {
        assertTrue(folder.toString().contains("target"), "not the folder of the build but " + folder);
        empty();
        Screen.until("the folder is empty", () -> guests.known().isEmpty() && guests.refusals().isEmpty());
        campaign = Campaign.anew();
        campaign.write("heron.campaign", Campaign.SEASON + "check Fords with Depth 4 from round 2\ncheck Weirs\n");
        list = campaign.open("ombra-4.list");
        season = campaign.open("heron.campaign");
    }

    @AfterEach
    void empty() throws IOException {
        Files.createDirectories(folder);
        try (var jars = Files.list(folder)) {
            for (Path jar : jars.toList()) {
                Files.delete(jar);
            }
        }
    }

    private static boolean says(OpenBook book, Predicate<String> words) {
        return book.marks().stream().anyMatch(mark -> words.test(mark.message()));
    }

    private void saidInTheList(String words) {
        Screen.until("the list hears: " + words, () -> says(list, words::equals));
    }

    private void saidInTheSeason(String begin) {
        Screen.until("the season hears: " + begin, () -> says(season, message -> message.startsWith(begin)));
    }

    private boolean marked(String words) {
        try {
            return Arrays.stream(campaign.project().findMarkers("org.cantonment.workbench.finding", true,
                    IResource.DEPTH_INFINITE)).anyMatch(marker -> words.equals(marker.getAttribute(IMarker.MESSAGE, "")));
        } catch (CoreException failed) {
            throw new IllegalStateException(failed);
        }
    }

    @Test
    void aJarIsTakenInReplacedAndTakenOutWithoutARestart() throws IOException {
        saidInTheSeason("No check called 'Fords' is installed here");
        Path jar = PluginJar.of(PLUGIN, "Fords", "Too deep for wagons.").into(folder, "fords.jar");
        saidInTheList("Too deep for wagons.");
        Screen.until("the marker is there", () -> marked("Too deep for wagons."));
        assertEquals(jar, guests.known("Fords").orElseThrow().origin().file().orElseThrow());
        Screen.picture("checks-dropped");
        PluginJar.of(PLUGIN, "Fords", "Too deep for anybody by now.").into(folder, "fords.jar");
        saidInTheList("Too deep for anybody by now.");
        Screen.until("the old words are gone", () -> !says(list, "Too deep for wagons."::equals));
        Files.delete(jar);
        saidInTheSeason("No check called 'Fords' is installed here");
        Screen.until("the list hears no more", () -> !says(list, message -> message.startsWith("Too deep")));
        Screen.until("the marker is gone", () -> !marked("Too deep for anybody by now."));
        assertEquals(List.of(), bundles());
    }

    private static List<String> bundles() {
        return Arrays.stream(FrameworkUtil.getBundle(GuestHouse.class).getBundleContext().getBundles())
                .filter(bundle -> bundle.getState() != Bundle.UNINSTALLED).map(Bundle::getSymbolicName)
                .filter(name -> name != null && name.startsWith("org.fen.")).toList();
    }

    @Test
    void whatCannotBeTakenInIsNamedByItsFile() throws IOException {
        Files.writeString(folder.resolve("words.jar"), "no jar at all");
        PluginJar.of(PLUGIN, "Fords", "Never.").with("Bundle-SymbolicName", "").into(folder, "blank.jar");
        PluginJar.of("org.fen.newer", "Fords", "Never.").door("[2.0,3)").into(folder, "newer.jar");
        PluginJar.of("org.fen.late", "Weirs", "Never.").with("Bundle-Activator", "org.fen.Nobody").into(folder, "late.jar");
        Screen.until("four are refused", () -> guests.refusals().size() == 4);
        List<String> why = guests.refusals().stream().map(Refusal::why).sorted().toList();
        assertTrue(why.get(0).startsWith("The jar blank.jar in the folder of checks "), why::toString);
        assertTrue(why.get(1).startsWith("The jar late.jar in the folder of checks cannot be used here: it fails as it starts"),
                why::toString);
        assertEquals("The jar newer.jar in the folder of checks cannot be used here: it needs the package"
                + " org.cantonment.rules.api in version [2.0.0,3.0.0), which this version of Cantonment does not have.",
                why.get(2));
        assertEquals("The jar words.jar in the folder of checks is no plug-in: it is no jar, or not a whole one.", why.get(3));
        Screen.until("the line says why", () -> says(season, message -> message.startsWith("No check called 'Fords'")
                && message.contains("newer.jar")));
        assertEquals(List.of(), bundles());
    }

    @Test
    void ofTwoWithOneNameTheOtherIsNamed() {
        PluginJar.of(PLUGIN, "Fords", "The first.").into(folder, "a.jar");
        saidInTheList("The first.");
        PluginJar.of("org.fen.other", "Fords", "The second.").into(folder, "b.jar");
        saidInTheSeason("The check Fords of plug-in org.fen.other 1.0.0 (b.jar) has the name of a check of");
        assertTrue(says(list, "The first."::equals));
    }

    @Test
    void aHostileOneIsNamedAndTheWorkbenchLivesOn() throws IOException {
        for (String deed : List.of("throws", "hangs", "eats")) {
            Path jar = PluginJar.of(PLUGIN, "Fords", deed).into(folder, deed + ".jar");
            PluginJar.of("org.fen.weirs", "Weirs", "Mind the weir.").into(folder, "weirs.jar");
            saidInTheSeason("The check Fords of plug-in org.fen.fords 1.0.0 (" + deed + ".jar) ");
            saidInTheList("Mind the weir.");
            list.caretBehind("Marsh-Scouts");
            list.type("\nNobody");
            Screen.until("typing is heard", () -> says(list, message -> message.contains("Nobody")));
            list.undo();
            list.undo();
            Files.delete(jar);
            Screen.until(deed + " is gone", () -> guests.known("Fords").isEmpty());
        }
    }

    @Test
    void aServiceOfAnInstalledPluginIsHeardWhileItIsThere() {
        ServiceRegistration<RuleCheck> service = FrameworkUtil.getBundle(DropFolderTest.class).getBundleContext()
                .registerService(RuleCheck.class, new FordCheck("Fords", "A service speaks."), null);
        try {
            saidInTheList("A service speaks.");
            assertEquals("org.cantonment.workbench.tests", guests.known("Fords").orElseThrow().origin().plugin());
        } finally {
            service.unregister();
        }
        saidInTheSeason("No check called 'Fords' is installed here");
    }

    @Test
    void theSettingsShowEachWithItsSourceAndState() {
        PluginJar.of(PLUGIN, "Fords", "throws").into(folder, "fords.jar");
        PluginJar.of("org.fen.weirs", "Weirs", "Mind the weir.").into(folder, "weirs.jar");
        saidInTheSeason("The check Fords of plug-in org.fen.fords 1.0.0 (fords.jar) failed");
        saidInTheList("Mind the weir.");
        var dialog = PreferencesUtil.createPreferenceDialogOn(Campaign.page().getWorkbenchWindow().getShell(),
                "org.cantonment.workbench.checks", new String[] { "org.cantonment.workbench.checks" }, null);
        dialog.setBlockOnOpen(false);
        dialog.open();
        try {
            Screen.picture("checks-settings");
            long before = guests.version();
            guests.forgive("Fords");
            // One change is that it is asked again; it may have failed once more, the second, before anybody looks.
            Screen.until("it fails again", () -> guests.version() >= before + 2
                    && guests.known("Fords").orElseThrow().shutOut().isPresent());
        } finally {
            dialog.close();
        }
    }
}
