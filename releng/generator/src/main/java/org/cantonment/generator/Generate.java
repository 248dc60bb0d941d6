package org.cantonment.generator;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.apache.log4j.Level;
import org.apache.log4j.Logger;
import org.eclipse.emf.mwe2.launch.runtime.Mwe2Launcher;

/**
 * Runs the workflow that writes {@code src-gen} and {@code xtext-gen}, unless what is there was made from the same
 * inputs.
 *
 * <p>The only argument is the project's root folder. The folders of generated code are emptied first, so nothing of a
 * former grammar is left behind. A failure ends with an exception: inside Maven the build stops there, on the command
 * line the exit code is 1.
 */
public final class Generate {

    /** Held here, because a logger that nobody holds is collected together with its level. */
    private static final java.util.logging.Logger MWE = java.util.logging.Logger.getLogger("org.eclipse.emf.mwe");

    private Generate() {
    }

    /**
     * @param args the project's root folder
     * @throws IOException if inputs cannot be read or old outputs cannot be removed
     */
    public static void main(String[] args) throws IOException {
        Path root = Path.of(args.length == 1 ? args[0] : "").toAbsolutePath().normalize();
        Path bundles = root.resolve("bundles");
        Path generator = root.resolve("releng/generator");
        List<Path> inputs = List.of(bundles.resolve("org.cantonment.model/model"),
                bundles.resolve("org.cantonment.notation/src/org/cantonment/notation/Book.xtext"),
                generator.resolve("workflow"), generator.resolve("pom.xml"), generator.resolve("src"));
        List<Path> outputs = List.of(bundles.resolve("org.cantonment.model/src-gen"),
                bundles.resolve("org.cantonment.notation/xtext-gen"),
                bundles.resolve("org.cantonment.notation.ide/xtext-gen"));
        Stamp stamp = new Stamp(root, generator.resolve("target/language.stamp"), inputs, outputs);
        if (stamp.holds()) {
            System.out.println("The language is unchanged: nothing to generate.");
            return;
        }
        stamp.lift();
        for (Path output : outputs) {
            empty(output);
        }
        run(bundles, generator.resolve("workflow/Language.mwe2"));
        stamp.set();
        System.out.println("The language was generated.");
    }

    private static void run(Path bundles, Path workflow) {
        // Only what is wrong is worth a line; the workflow's own report of each step is forty.
        Logger.getLogger("org.eclipse.xtext").setLevel(Level.WARN);
        MWE.setLevel(java.util.logging.Level.SEVERE);
        new Mwe2Launcher().run(new String[] { workflow.toUri().toString(), "-p", "bundles=" + bundles });
    }

    private static void empty(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (var all = Files.walk(folder)) {
                all.sorted(java.util.Comparator.reverseOrder()).forEach(Generate::delete);
            }
        }
        Files.createDirectories(folder);
    }

    private static void delete(Path path) {
        try {
            Files.delete(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
