package org.cantonment.desk.tests.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

import org.cantonment.desk.start.FlatClassPath;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Made-up bundles, of which one is to be started without OSGi. */
class FlatClassPathTest {

    @TempDir
    private Path folder;

    private Path plugins;
    private Path flat;

    @BeforeEach
    void plugins() throws IOException {
        plugins = Files.createDirectory(folder.resolve("plugins"));
        flat = Files.createDirectory(folder.resolve("flat"));
        bundle("desk_1.jar", "Bundle-SymbolicName: desk;singleton:=true\n"
                + "Require-Bundle: text;bundle-version=\"[1.0,2)\";visibility:=reexport,extra;resolution:=optional\n"
                + "Import-Package: org.coins;version=\"[1,2)\",javax.xml.parsers,org.maybe;resolution:=\"optional\"\n");
        bundle("text_1.jar", "Bundle-SymbolicName: text\nImport-Package: org.deep\n");
        bundle("coins_1.jar", "Bundle-SymbolicName: coins\nExport-Package: org.coins;uses:=\"a,b\";version=\"1.0\"\n");
        bundle("deep_1.jar", "Bundle-SymbolicName: deep\nExport-Package: org.other;org.deep;version=1\n"
                + "Require-Bundle: text\n");
        bundle("extra_1.jar", "Bundle-SymbolicName: extra\nExport-Package: org.maybe\n");
    }

    @Test
    void takesWhatIsNeededDirectlyOrThroughOthersAndNothingElse() throws IOException {
        FlatClassPath.write(plugins, "desk", flat, folder.resolve("later"));
        assertEquals(List.of("coins_1.jar", "deep_1.jar", "desk_1.jar", "text_1.jar"), jars());
    }

    @Test
    void namesThePlaceWhereTheCopiesWillLie() throws IOException {
        Path later = folder.resolve("later");
        FlatClassPath.write(plugins, "desk", flat, later);
        String[] path = Files.readString(flat.resolve("classpath")).split(File.pathSeparator);
        assertEquals(later.resolve("desk_1.jar").toString(), path[0]);
        assertEquals(jars(), Arrays.stream(path).map(p -> Path.of(p).getFileName().toString()).sorted().toList());
    }

    @Test
    void leavesSignaturesOutAndKeepsEverythingElse() throws IOException {
        FlatClassPath.write(plugins, "desk", flat, flat);
        try (JarFile copy = new JarFile(flat.resolve("desk_1.jar").toFile())) {
            List<String> entries = copy.stream().map(ZipEntry::getName).sorted().toList();
            assertEquals(List.of("META-INF/MANIFEST.MF", "META-INF/services/org.Door", "org/Some.SF"), entries);
            assertTrue(copy.getManifest().getEntries().isEmpty());
            assertEquals("desk;singleton:=true", copy.getManifest().getMainAttributes().getValue("Bundle-SymbolicName"));
        }
    }

    @Test
    void saysWhatIsMissing() throws IOException {
        Files.delete(plugins.resolve("text_1.jar"));
        String message = assertThrows(IllegalArgumentException.class,
                () -> FlatClassPath.write(plugins, "desk", flat, flat)).getMessage();
        assertTrue(message.contains("text"), message);
        assertFalse(Files.exists(flat.resolve("classpath")));
    }

    private List<String> jars() throws IOException {
        try (var all = Files.list(flat)) {
            return all.map(p -> p.getFileName().toString()).filter(n -> n.endsWith(".jar")).sorted()
                    .collect(Collectors.toList());
        }
    }

    private void bundle(String name, String headers) throws IOException {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(plugins.resolve(name)))) {
            entry(out, "META-INF/MANIFEST.MF",
                    "Manifest-Version: 1.0\n" + fold(headers) + "\nName: org/Some.SF\nSHA-256-Digest: abc\n");
            entry(out, "META-INF/A.SF", "signed");
            entry(out, "META-INF/A.RSA", "signed");
            entry(out, "META-INF/services/org.Door", "org.Visitor");
            entry(out, "org/Some.SF", "not a signature here");
        }
    }

    /** Manifest lines end after 72 bytes and go on with a blank. */
    private static String fold(String headers) {
        return Arrays.stream(headers.split("\n")).map(l -> l.replaceAll("(.{60})", "$1\n "))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static void entry(ZipOutputStream out, String name, String text) throws IOException {
        out.putNextEntry(new ZipEntry(name));
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }
}
