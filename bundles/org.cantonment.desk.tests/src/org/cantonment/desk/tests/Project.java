package org.cantonment.desk.tests;

import java.nio.file.Files;
import java.nio.file.Path;

/** Files of the project itself, wherever the tests are started. */
final class Project {
    private Project() {
    }

    /** A file or folder of the project, by its path from the top. */
    static Path file(String path) {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.isRegularFile(at.resolve("docs/notation.md"))) {
                return at.resolve(path);
            }
        }
        throw new IllegalStateException("The tests must be started somewhere in the project");
    }
}
