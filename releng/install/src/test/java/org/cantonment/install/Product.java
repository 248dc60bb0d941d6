package org.cantonment.install;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/** A copy of the built product that may be installed into. */
final class Product {

    static final Path ROOT = Path.of(System.getProperty("cantonment.root")).normalize();
    static final Path WORK = Path.of(System.getProperty("cantonment.work"));

    private static final Path PROBE = Path.of(System.getProperty("cantonment.probe"));
    private static final int MOST_MINUTES = 5;

    private final Path folder;

    private Product(Path folder) {
        this.folder = folder;
    }

    /** A copy with the probe in its {@code dropins}. */
    static Product anew(String name) throws IOException {
        Path folder = WORK.resolve("product-" + name);
        delete(folder);
        copy(built(), folder);
        Product product = new Product(folder);
        product.drop(PROBE);
        return product;
    }

    private static Path built() {
        String os = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        String arch = System.getProperty("os.arch").equals("aarch64") ? "aarch64" : "x86_64";
        String place = os.startsWith("windows") ? "win32/win32/x86_64/cantonment"
                : os.startsWith("mac") ? "macosx/cocoa/" + arch + "/Cantonment.app/Contents/Eclipse"
                : "linux/gtk/x86_64/cantonment";
        return ROOT.resolve("releng/product/target/products/org.cantonment.workbench.product").resolve(place);
    }

    /** Puts a jar into the folder from which the product takes whatever lies there. */
    void drop(Path jar) throws IOException {
        Files.createDirectories(folder.resolve("dropins"));
        Files.copy(jar, folder.resolve("dropins").resolve(jar.getFileName()), StandardCopyOption.REPLACE_EXISTING);
    }

    void pickUp(Path jar) throws IOException {
        Files.delete(folder.resolve("dropins").resolve(jar.getFileName()));
    }

    /** What the probe says about the checks at each step. */
    List<String> probe(String... arguments) throws IOException, InterruptedException {
        List<String> said = run("org.cantonment.install.probe", true, arguments);
        return said.stream().filter(line -> line.matches("(before|installed|uninstalled) \\d+ of \\d+")).toList();
    }

    /** What the command line finds in a campaign with breaches, each line from the file's name on. */
    List<String> check(Path season) throws IOException, InterruptedException {
        return run("org.cantonment.workbench.terminal", false, "=check", "=" + season).stream()
                .filter(line -> line.matches(".*:\\d+:\\d+: .*")).map(line -> line.replaceFirst(".*[/\\\\](?=[^/\\\\]*:\\d)", "")).toList();
    }

    /** What the director says, which must have succeeded. */
    List<String> director(String... arguments) throws IOException, InterruptedException {
        return run("org.eclipse.equinox.p2.director", true, arguments);
    }

    /** What the director says when it refuses. */
    String refused(String... arguments) throws IOException, InterruptedException {
        return String.join("\n", run("org.eclipse.equinox.p2.director", false, arguments));
    }

    private List<String> run(String application, boolean well, String... arguments) throws IOException, InterruptedException {
        Path log = Files.createTempFile(WORK, "said", ".txt");
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-jar", launcher().toString(), "-install", folder.toString(),
                "-nosplash", "-consoleLog", "-data", WORK.resolve("workspace").toString(), "-application", application));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
        try {
            assertTrue(process.waitFor(MOST_MINUTES, TimeUnit.MINUTES), "It has not ended; see " + log);
        } finally {
            process.destroyForcibly();
        }
        List<String> said = Files.readAllLines(log);
        assertEquals(well, process.exitValue() == 0, () -> String.join("\n", said));
        Files.delete(log);
        return said;
    }

    private Path launcher() throws IOException {
        try (var jars = Files.list(folder.resolve("plugins"))) {
            return jars.filter(j -> j.getFileName().toString().startsWith("org.eclipse.equinox.launcher_")).findFirst()
                    .orElseThrow();
        }
    }

    /** Jars are never written to and may be the same files; all else is copied. */
    static void copy(Path from, Path to) throws IOException {
        List<Path> all;
        try (var found = Files.walk(from)) {
            all = found.filter(p -> !p.startsWith(from.resolve("sdk"))).toList();
        }
        for (Path path : all) {
            Path copy = to.resolve(from.relativize(path).toString());
            if (Files.isDirectory(path)) {
                Files.createDirectories(copy);
            } else if (path.toString().endsWith(".jar")) {
                Files.createLink(copy, path);
            } else {
                Files.copy(path, copy);
            }
        }
    }

    static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> all;
        try (var found = Files.walk(folder)) {
            all = found.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path each : all) {
            Files.delete(each);
        }
    }
}
