package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;

import org.cantonment.rules.guest.Guests;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where checks of others have a say, the product is asked, with the same words; everywhere else it is not. */
class HandOverTest {
    @TempDir
    Path folder;
    @TempDir
    Path product;
    @TempDir
    Path home;
    private String userHome;

    @BeforeEach
    void make() throws IOException {
        SmallWar.into(folder);
        Files.writeString(folder.resolve("heron.campaign"), SmallWar.CAMPAIGN + "check Fords\n");
        Path plugins = Files.createDirectories(product.resolve("plugins"));
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, FakeLauncher.class.getName());
        String path = FakeLauncher.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream jar = new JarOutputStream(
                Files.newOutputStream(plugins.resolve("org.eclipse.equinox.launcher_1.0.0.jar")), manifest);
                InputStream in = FakeLauncher.class.getClassLoader().getResourceAsStream(path)) {
            jar.putNextEntry(new ZipEntry(path));
            in.transferTo(jar);
        }
        System.setProperty("cantonment.home", product.toString());
        userHome = System.setProperty("user.home", home.toString());
    }

    @AfterEach
    void restore() {
        System.clearProperty("cantonment.home");
        System.setProperty("user.home", userHome);
    }

    private boolean called() {
        return Files.exists(folder.resolve("called.txt"));
    }

    @Test
    void aCampaignThatTurnsOnACheckIsAskedInTheProductWithTheSameWords() throws IOException {
        assertEquals(1, Shell.in(folder, "check", "--json", "lists/ombra-2.list").code());
        List<String> words = Files.readAllLines(folder.resolve("called.txt"));
        assertEquals(List.of("=check", "=--json", "=lists/ombra-2.list"), words.subList(words.size() - 3, words.size()));
        assertEquals("org.cantonment.workbench.terminal", words.get(words.indexOf("-application") + 1));
        assertEquals(product.toString(), words.get(words.indexOf("-install") + 1));
        assertEquals("@none", words.get(words.indexOf("-data") + 1), "no workspace is touched");
        assertFalse(Path.of(words.get(words.indexOf("-configuration") + 1)).startsWith(product));
    }

    @Test
    void erasOfAListAndAdoptingAreAskedThere() throws IOException {
        assertEquals(1, Shell.in(folder, "eras", "lists/ombra-2.list", "--next", "1").code());
        List<String> words = Files.readAllLines(folder.resolve("called.txt"));
        assertEquals(List.of("=eras", "=lists/ombra-2.list", "=--next", "=1"), words.subList(words.size() - 4, words.size()));
        Files.delete(folder.resolve("called.txt"));
        Shell.in(folder, "eras", "ombra.shelf");
        assertFalse(called(), "no check is asked about a shelf");
        assertEquals(1, Shell.in(folder, "adopt", "books/winter.rules", ".").code());
        assertTrue(called());
    }

    @Test
    void whatNeedsNoForeignCheckIsAnsweredHere() throws IOException {
        assertEquals(0, Shell.in(folder, "points", "lists/ombra-2.list").code());
        assertEquals(0, Shell.in(folder, "check", "--help").code());
        assertEquals(2, Shell.in(folder, "check", "lists/nobody.list").code());
        Shell.in(folder, Optional.of(new Guests()), "check", ".");
        Files.writeString(folder.resolve("heron.campaign"), SmallWar.CAMPAIGN);
        Shell.in(folder, "check", ".");
        assertFalse(called());
        Shell.in(folder, "checks");
        assertTrue(called());
    }

    @Test
    void aProductThatDoesNotStartIsSaidAndTheRestIsAnswered() throws IOException {
        Files.createFile(folder.resolve("broken"));
        Shell shell = Shell.in(folder, "check", "lists/ombra-2.list");
        assertEquals(0, shell.code());
        assertTrue(called());
        assertTrue(shell.err().contains("cantonment: the product could not be started, so the checks of plug-ins are not"
                + " asked."), shell.err());
        assertTrue(shell.out().contains("check.missing"), shell.out());
    }
}
