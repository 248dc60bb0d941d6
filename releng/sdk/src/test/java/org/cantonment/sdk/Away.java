package org.cantonment.sdk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A folder outside the project, where plain Maven builds with nothing of ours but the sdk. */
final class Away {

    static final Path SDK = Path.of(System.getProperty("cantonment.sdk"));
    static final Path ROOT = Path.of(System.getProperty("cantonment.root")).normalize();

    private static final Path WORK = Path.of(System.getProperty("cantonment.work"));
    private static final int MOST_MINUTES = 10;
    /** Where Maven's own plugins are taken from if they were fetched before: a place to read from, never to write to. */
    private static final String SETTINGS = """
            <settings>
              <localRepository>%s</localRepository>
              <profiles>
                <profile>
                  <id>at-hand</id>
                  <repositories>%s</repositories>
                  <pluginRepositories>%s</pluginRepositories>
                </profile>
              </profiles>
              <activeProfiles>
                <activeProfile>at-hand</activeProfile>
              </activeProfiles>
            </settings>
            """;
    private static final String AT_HAND = """
            <%s><id>at-hand</id><url>%s</url>
            <releases><checksumPolicy>ignore</checksumPolicy></releases>
            <snapshots><enabled>false</enabled></snapshots></%1$s>""";

    private final Path folder;

    private Away(Path folder) {
        this.folder = folder;
    }

    /** An empty folder of this name. */
    static Away in(String name) throws IOException {
        Path folder = WORK.resolve("away").resolve(name);
        Trees.delete(folder);
        Files.createDirectories(folder);
        return new Away(folder);
    }

    Path folder() {
        return folder;
    }

    /**
     * Runs this machine's Maven as somebody would who has unpacked the sdk. It has a local repository of its own, so that
     * nothing of the project's build can be found by accident and nothing of this is left in the user's.
     */
    void maven(String... arguments) throws IOException, InterruptedException {
        String atHand = Path.of(System.getProperty("cantonment.repository")).toUri().toString();
        Path settings = WORK.resolve("away/settings.xml");
        Files.writeString(settings, SETTINGS.formatted(WORK.resolve("away-repository"),
                AT_HAND.formatted("repository", atHand), AT_HAND.formatted("pluginRepository", atHand)));
        List<String> command = new ArrayList<>(List.of("mvn", "-B", "-ntp", "-s", settings.toString()));
        command.addAll(List.of(arguments));
        File log = folder.resolve("build.log").toFile();
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true)
                .redirectOutput(log);
        // what the Maven that runs this test said to itself is not for this one
        builder.environment().keySet().removeIf(n -> n.startsWith("MAVEN_") && !n.equals("MAVEN_OPTS") || n.startsWith("M2_"));
        Process maven = builder.start();
        try {
            assertTrue(maven.waitFor(MOST_MINUTES, TimeUnit.MINUTES), "Maven has not ended; see " + log);
        } finally {
            maven.destroy();
        }
        assertEquals(0, maven.exitValue(), () -> "The build failed:\n" + read(log.toPath()));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            return unreadable.toString();
        }
    }
}
