package org.cantonment.desk.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/**
 * Copies the jars that a bundle needs into one folder, without their signatures, and writes the class path.
 *
 * <p>Java's class archive leaves signed jars out, and most of the platform's jars are signed: the copies are what
 * makes a start in less than a second possible.
 */
public final class FlatClassPath {

    private FlatClassPath() {
    }

    /**
     * @param args the folder of bundles; the name of the bundle to start; the folder to write to; and the folder where
     *        what was written will lie in the end, which is what the class path names
     */
    public static void main(String[] args) {
        if (args.length != 4) {
            System.err.println("usage: FlatClassPath PLUGINS BUNDLE WRITE-TO LIVES-AT");
            System.exit(2);
        }
        try {
            write(Path.of(args[0]), args[1], Path.of(args[2]), Path.of(args[3]));
        } catch (IOException | IllegalArgumentException e) {
            System.err.println("The command line could not be made ready: " + e.getMessage());
            System.exit(1);
        }
    }

    /**
     * Writes the copies and, last of all, the file {@code classpath}, whose presence says that all are there.
     *
     * @param plugins the folder of bundles
     * @param bundle the symbolic name of the bundle to start
     * @param writeTo an existing folder for the copies
     * @param livesAt the folder's name in the end, which the class path names
     * @throws IOException if a jar cannot be read or written
     * @throws IllegalArgumentException if a required bundle is missing
     */
    public static void write(Path plugins, String bundle, Path writeTo, Path livesAt) throws IOException {
        List<String> path = new ArrayList<>();
        for (Path jar : Bundles.in(plugins).closure(bundle)) {
            String name = jar.getFileName().toString();
            copy(jar, writeTo.resolve(name));
            path.add(livesAt.resolve(name).toString());
        }
        Files.writeString(writeTo.resolve("classpath"), String.join(java.io.File.pathSeparator, path));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (JarFile in = new JarFile(from.toFile(), false);
                OutputStream file = Files.newOutputStream(to);
                JarOutputStream out = new JarOutputStream(file)) {
            Manifest manifest = new Manifest(in.getManifest());
            manifest.getEntries().clear();
            out.putNextEntry(new JarEntry(JarFile.MANIFEST_NAME));
            manifest.write(out);
            for (JarEntry entry : in.stream().filter(e -> !e.isDirectory() && !signing(e.getName())).toList()) {
                out.putNextEntry(new JarEntry(entry.getName()));
                try (InputStream bytes = in.getInputStream(entry)) {
                    bytes.transferTo(out);
                }
            }
        }
    }

    private static boolean signing(String name) {
        String upper = name.toUpperCase(Locale.ROOT);
        return upper.equals(JarFile.MANIFEST_NAME) || upper.startsWith("META-INF/") && upper.matches(".*\\.(SF|RSA|DSA|EC)");
    }
}
