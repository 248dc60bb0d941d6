package org.cantonment.house;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.Manifest;

/** What a bundle enters, according to its manifest. */
final class Door {

    private Door() {
    }

    /**
     * The bundles it requires and the packages it imports, optional ones included.
     *
     * @throws IOException if the manifest cannot be read
     */
    static Set<String> enters(Path bundle) throws IOException {
        Manifest manifest;
        try (InputStream in = Files.newInputStream(bundle.resolve("META-INF/MANIFEST.MF"))) {
            manifest = new Manifest(in);
        }
        Set<String> names = new TreeSet<>();
        Attributes main = manifest.getMainAttributes();
        collect(main.getValue("Require-Bundle"), names);
        collect(main.getValue("Import-Package"), names);
        return names;
    }

    private static void collect(String header, Set<String> names) {
        if (header == null) {
            return;
        }
        // Version ranges hold commas; without the quoted texts every comma parts two clauses.
        for (String clause : header.replaceAll("\"[^\"]*\"", "").split(",")) {
            for (String part : clause.split(";")) {
                if (!part.contains("=") && !part.isBlank()) {
                    names.add(part.strip());
                }
            }
        }
    }
}
