package org.cantonment.desk.tests;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.cantonment.testkit.Project;

/** Copies of the folders under resources/outside, to be changed at will. */
final class Folders {
    private static final String OUTSIDE = "bundles/org.cantonment.desk.tests/resources/outside/";

    private Folders() {
    }

    /** Copies a folder of books with all below it. */
    static void copy(String name, Path to) {
        Path from = Project.file(OUTSIDE).resolve(name);
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : (Iterable<Path>) all::iterator) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts other words in the place of some. */
    static void retype(Path file, String words, String other) {
        String text = read(file);
        if (!text.contains(words)) {
            throw new IllegalArgumentException(file + " does not say '" + words + "'");
        }
        write(file, text.replace(words, other));
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void write(Path file, String text) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The texts of all files below a folder, to see that nothing was written. */
    static List<String> texts(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().map(path -> path + "\n" + read(path)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
