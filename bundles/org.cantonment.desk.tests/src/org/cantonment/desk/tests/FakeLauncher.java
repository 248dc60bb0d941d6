package org.cantonment.desk.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Stands for the product's launcher: writes down with which words it was called, and ends with 1, or as one that cannot start. */
public final class FakeLauncher {
    private FakeLauncher() {
    }

    /** @param args as the launcher gets them */
    public static void main(String[] args) throws IOException {
        Files.write(Path.of("called.txt"), List.of(args));
        System.exit(Files.exists(Path.of("broken")) ? 13 : 1);
    }
}
