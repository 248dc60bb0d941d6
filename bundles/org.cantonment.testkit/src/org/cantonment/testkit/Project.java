package org.cantonment.testkit;

import java.nio.file.Files;
import java.nio.file.Path;

/** Files of the project itself, wherever the tests are started. */
public final class Project {
    private Project() {
    }

    /**
     * A file or folder of the project, by its path from the top.
     *
     * @throws IllegalStateException if the tests were not started somewhere in the project
     */
    public static Path file(String path) {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.isRegularFile(at.resolve("docs/notation.md"))) {
                return at.resolve(path);
            }
        }
        throw new IllegalStateException("The tests must be started somewhere in the project");
    }
}
