package org.cantonment.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.cantonment.desk.cli.Main;
import org.cantonment.desk.cli.Terminal;
import org.cantonment.desk.files.FolderScan;
import org.eclipse.xtext.linking.lazy.LazyLinkingResource;

/** A folder of 1,000 lists checked; beside parsing and linking the same files, bare. Each time in a Java of its own. */
final class Folder {
    private static final int LISTS = 1_000;
    private static final int LINES = 60;
    private static final int RUNS = 3;

    private Folder() {
    }

    static List<Row> run(Path folder) throws IOException {
        Texts.write(folder, LISTS, LINES);
        List<Long> ours = new ArrayList<>();
        List<Long> reference = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            ours.add(Processes.java("folder-ours", folder.toString()));
            reference.add(Processes.java("folder-bare", folder.toString()));
        }
        return List.of(Row.at(0.5, "a folder of 1,000 lists, 'check', median, ms", ours, reference));
    }

    /** What the command line does, its answer thrown away. Returns the nanoseconds. */
    static long ours(Path folder) {
        long begin = System.nanoTime();
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        int code = Main.run(new String[] {"check", folder.toString()}, new Terminal(nowhere, nowhere, folder));
        if (code > 1) {
            throw new IllegalStateException("The check did not run: " + code);
        }
        return System.nanoTime() - begin;
    }

    /** Loads all, then links all. Returns the nanoseconds. */
    static long bare(Path folder) throws IOException {
        long begin = System.nanoTime();
        Bare bare = new Bare();
        List<LazyLinkingResource> resources = new ArrayList<>();
        for (Path file : FolderScan.of(folder).books()) {
            resources.add(bare.load(file));
        }
        resources.forEach(Bare::link);
        return System.nanoTime() - begin;
    }
}
