package org.cantonment.sdk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.zip.ZipFile;

import org.cantonment.workbench.author.Answers;
import org.cantonment.workbench.author.Template;
import org.junit.jupiter.api.Test;

/** The sdk as somebody has it who has nothing else: unpacked, and plain Maven. */
class SdkTest {

    private static final Path EXAMPLE = Away.SDK.resolve("examples/lake-club-checks");

    /** Built here and there it is one plug-in, to the byte. */
    @Test
    void theExampleBuildsAnywhere() throws IOException, InterruptedException {
        Away away = Away.in("example");
        Trees.copy(EXAMPLE, away.folder());
        away.maven("-Dcantonment.sdk=" + Away.SDK, "verify");
        String jar = "target/lake.club.checks-1.0.0.jar";
        assertArrayEquals(Files.readAllBytes(Away.ROOT.resolve("examples/lake-club-checks").resolve(jar)),
                Files.readAllBytes(away.folder().resolve(jar)));
        assertTrue(tests(away) >= 6, "its own tests ran");
    }

    @Test
    void whatTheWizardWritesBuildsAsItIs() throws IOException, InterruptedException {
        Away away = Away.in("wizard's");
        Template template = new Template(texts(EXAMPLE));
        template.write(away.folder(), new Answers("pier.eels", "Eel-Count", "At most \"9\" eels & no <more>, $1 each.",
                "Fill", "Ombra & Brack", Optional.of(Away.SDK)));
        away.maven("verify");
        assertTrue(tests(away) >= 6, "its own tests ran");
        try (JarFile jar = new JarFile(away.folder().resolve("target/pier.eels-1.0.0.jar").toFile())) {
            Attributes manifest = jar.getManifest().getMainAttributes();
            assertEquals("pier.eels", manifest.getValue("Bundle-SymbolicName"));
            assertEquals("Ombra & Brack", manifest.getValue("Bundle-Vendor"));
            assertTrue(manifest.getValue("Import-Package").contains("org.cantonment.rules.api;version=\"[1.0,2)\""),
                    manifest.getValue("Import-Package"));
            String component = manifest.getValue("Service-Component");
            assertEquals("OSGI-INF/pier.eels.EelCount.xml", component);
            String service = new String(jar.getInputStream(jar.getEntry(component)).readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(service.contains("<provide interface=\"org.cantonment.rules.api.RuleCheck\"/>"), service);
        }
        try (ZipFile site = new ZipFile(away.folder().resolve("target/pier.eels-1.0.0-site.zip").toFile())) {
            assertNotNull(site.getEntry("features/pier.eels.feature_1.0.0.jar"));
            assertNotNull(site.getEntry("plugins/pier.eels_1.0.0.jar"));
            String content = new String(site.getInputStream(site.getEntry("content.xml")).readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(content.contains("value=\"At most &quot;9&quot; eels &amp; no &lt;more&gt;, &#36;1 each.\""), content);
        }
    }

    /** What is not promised to stay is not there to lean on. */
    @Test
    void theRulesAreHandedOutAsTheirDoorAlone() throws IOException {
        try (JarFile jar = new JarFile(find("org.cantonment.rules", ".jar").toFile())) {
            assertEquals(List.of(), jar.stream().map(e -> e.getName())
                    .filter(n -> n.endsWith(".class") && !n.startsWith("org/cantonment/rules/api/")).toList());
            assertEquals("org.cantonment.rules.api;version=\"1.0.0\"",
                    jar.getManifest().getMainAttributes().getValue("Export-Package"));
        }
        try (ZipFile sources = new ZipFile(find("org.cantonment.rules", "-sources.jar").toFile());
                ZipFile reference = new ZipFile(find("org.cantonment.rules", "-javadoc.jar").toFile())) {
            assertNotNull(sources.getEntry("org/cantonment/rules/api/RuleCheck.java"));
            assertNotNull(reference.getEntry("org/cantonment/rules/api/RuleCheck.html"));
        }
    }

    @Test
    void theZipHoldsWhatTheFolderHolds() throws IOException {
        try (ZipFile zip = new ZipFile(Away.SDK.resolveSibling("cantonment-sdk-0.1.0-SNAPSHOT.zip").toFile())) {
            assertEquals(Trees.files(Away.SDK).stream().map(f -> "cantonment-sdk/" + f.toString().replace('\\', '/')).sorted()
                    .toList(), zip.stream().map(e -> e.getName()).sorted().toList());
        }
    }

    private static Path find(String artifact, String end) throws IOException {
        Path home = Away.SDK.resolve("repository/org/cantonment").resolve(artifact);
        try (var files = Files.walk(home)) {
            return files.filter(f -> f.toString().endsWith("-1" + end)).findFirst().orElseThrow();
        }
    }

    private static int tests(Away away) throws IOException {
        int tests = 0;
        try (var reports = Files.list(away.folder().resolve("target/surefire-reports"))) {
            for (Path report : reports.filter(r -> r.toString().endsWith(".xml")).toList()) {
                tests += Files.readString(report).split("<testcase ", -1).length - 1;
            }
        }
        return tests;
    }

    private static Map<String, String> texts(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (Path file : Trees.files(folder)) {
            texts.put(file.toString().replace('\\', '/'), Files.readString(folder.resolve(file.toString())));
        }
        return texts;
    }
}
