package org.cantonment.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One list checked from cold, by the command line as it is installed; beside the start of an application in the same
 * product that returns at once.
 */
final class Cold {
    private static final int RUNS = 9;

    private Cold() {
    }

    /**
     * Measures.
     *
     * @param folder  an empty folder
     * @param product the built product
     * @param nothing a bundle with the application {@code org.cantonment.nothing.application}, which returns at once
     * @param list    the list to check
     */
    static List<Row> run(Path folder, Path product, Path nothing, Path list) throws IOException {
        List<String> check = List.of(product.resolve("cantonment-desk").toString(), "check", list.toString());
        List<String> empty = empty(folder, product, nothing);
        // The first runs write what later ones start from: a class archive here, the resolved bundles there.
        for (int i = 0; i < 2; i++) {
            Processes.timed(check, folder);
            Processes.timed(empty, folder);
        }
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            ours.add(Processes.timed(check, folder));
            reference.add(Processes.timed(empty, folder));
        }
        return List.of(Row.at(0.5, "one list, 'check' from cold, median, ms", ours, reference));
    }

    private static List<String> empty(Path folder, Path product, Path nothing) throws IOException {
        Path configuration = folder.resolve("configuration");
        copy(product.resolve("configuration/config.ini"), configuration.resolve("config.ini"));
        String bundles = "org.eclipse.equinox.simpleconfigurator/bundles.info";
        copy(product.resolve("configuration").resolve(bundles), configuration.resolve(bundles));
        Files.writeString(configuration.resolve(bundles),
                "org.cantonment.nothing,1.0.0," + nothing.toUri() + ",4,false\n", StandardOpenOption.APPEND);
        try (Stream<Path> plugins = Files.list(product.resolve("plugins"))) {
            Path launcher = plugins.filter(p -> p.getFileName().toString().startsWith("org.eclipse.equinox.launcher_"))
                    .findFirst().orElseThrow();
            return List.of(Processes.javaProgram(), "-Xms128m", "-Xmx1g", "-Xshare:auto",
                    "-Dlog4j.defaultInitOverride=true", "-jar", launcher.toString(), "-install", product.toString(),
                    "-configuration", configuration.toString(), "-data", folder.resolve("data").toString(), "-nosplash",
                    "-application", "org.cantonment.nothing.application");
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
}
