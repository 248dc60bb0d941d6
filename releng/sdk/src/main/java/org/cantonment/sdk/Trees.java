package org.cantonment.sdk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Folders with all that is in them. */
final class Trees {

    private static final Set<String> NOT_SOURCE = Set.of("target", "bin", ".settings", ".project", ".classpath");

    private Trees() {
    }

    /** Deletes a folder, if it is there. */
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

    /** The files in a folder, as paths from it, in a fixed order; what a build made is left out. */
    static List<Path> files(Path folder) throws IOException {
        try (var found = Files.walk(folder)) {
            return found.filter(Files::isRegularFile).map(folder::relativize).filter(Trees::isSource).sorted().toList();
        }
    }

    private static boolean isSource(Path path) {
        for (Path step : path) {
            if (NOT_SOURCE.contains(step.toString())) {
                return false;
            }
        }
        return true;
    }

    /** Copies the files of a folder, without what a build made. */
    static void copy(Path from, Path to) throws IOException {
        for (Path file : files(from)) {
            Path copy = to.resolve(file.toString());
            Files.createDirectories(copy.getParent());
            Files.copy(from.resolve(file.toString()), copy);
        }
    }
}
