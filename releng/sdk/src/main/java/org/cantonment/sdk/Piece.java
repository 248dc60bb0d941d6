package org.cantonment.sdk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A built bundle, or as much of it as authors may see.
 *
 * @param root the project's root folder
 * @param name the bundle's name
 * @param version the version it was built as
 * @param part the folder of packages that is handed out, as in a jar; all of them if empty
 */
record Piece(Path root, String name, String version, String part) {

    Path jar() {
        return root.resolve("bundles/" + name + "/target/" + name + '-' + version + ".jar");
    }

    Path sources() {
        return root.resolve("bundles/" + name + "/src");
    }

    /** The source files that are handed out, in a fixed order. */
    List<Path> files() throws IOException {
        try (var all = Files.walk(sources().resolve(part))) {
            return all.filter(f -> f.toString().endsWith(".java")).sorted().toList();
        }
    }
}
