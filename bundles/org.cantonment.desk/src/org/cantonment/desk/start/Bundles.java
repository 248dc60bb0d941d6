package org.cantonment.desk.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;

/** The bundles of a folder, and which of them one of them cannot do without. */
final class Bundles {

    private record Bundle(Path jar, List<String> bundles, List<String> packages) {
    }

    private final Map<String, Bundle> byName = new TreeMap<>();
    private final Map<String, String> exporters = new TreeMap<>();

    private Bundles() {
    }

    /**
     * Reads the manifests of a folder's jars. Of two bundles with one name, or two exporters of one package, the
     * first by file name counts.
     *
     * @throws IOException if the folder or a jar cannot be read
     */
    static Bundles in(Path folder) throws IOException {
        Bundles found = new Bundles();
        List<Path> jars;
        try (var all = Files.list(folder)) {
            jars = all.filter(p -> p.toString().endsWith(".jar")).sorted().toList();
        }
        for (Path jar : jars) {
            try (JarFile open = new JarFile(jar.toFile(), false)) {
                found.add(jar, open.getManifest());
            }
        }
        return found;
    }

    private void add(Path jar, Manifest manifest) {
        Attributes main = manifest == null ? new Attributes() : manifest.getMainAttributes();
        List<Header.Clause> names = Header.clauses(main.getValue("Bundle-SymbolicName"));
        if (names.isEmpty()) {
            return;
        }
        String name = names.get(0).name();
        byName.putIfAbsent(name, new Bundle(jar, needed(main, "Require-Bundle"), needed(main, "Import-Package")));
        Header.clauses(main.getValue("Export-Package")).forEach(e -> exporters.putIfAbsent(e.name(), name));
    }

    private static List<String> needed(Attributes main, String header) {
        return Header.clauses(main.getValue(header)).stream().filter(c -> !c.optional()).map(Header.Clause::name)
                .toList();
    }

    /**
     * The jars of a bundle and of all that it needs, directly or through others; the bundle itself first.
     *
     * <p>A package that no bundle exports is taken to come from the JDK.
     *
     * @throws IllegalArgumentException if a required bundle is not in the folder
     */
    List<Path> closure(String root) {
        Set<String> reached = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(root));
        List<Path> jars = new ArrayList<>();
        while (!open.isEmpty()) {
            String name = open.remove();
            if (!reached.add(name)) {
                continue;
            }
            Bundle bundle = byName.get(name);
            if (bundle == null) {
                throw new IllegalArgumentException("The bundle " + name + " is missing.");
            }
            jars.add(bundle.jar());
            bundle.bundles().stream().filter(b -> !b.equals("system.bundle")).forEach(open::add);
            bundle.packages().stream().map(exporters::get).filter(e -> e != null).forEach(open::add);
        }
        return jars;
    }
}
