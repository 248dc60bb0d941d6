package org.cantonment.sdk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A Maven repository in a folder: {@code group/artifact/version/} with jar, sources, reference, pom and their SHA-1.
 *
 * <p>A snapshot gets its time as Maven's own repositories do it, so that a newer sdk takes the place of an older one that
 * Maven has kept; the time is that of the bundle's version.
 */
final class Repository {

    private static final Pattern QUALIFIER = Pattern.compile("\\d+\\.\\d+\\.\\d+\\.(\\d{8})(\\d{4})");
    private static final String GROUP = "org.cantonment";

    private final Path folder;
    private final String version;

    Repository(Path folder, String version) {
        this.folder = folder;
        this.version = version;
    }

    /**
     * Adds a piece.
     *
     * @param piece what is added
     * @param reference the folder of the reference's pages
     * @param title its name in the pom
     * @param dependencies what it stands on, each as {@code group:artifact:version}
     * @throws IOException if it cannot be read or written
     */
    void add(Piece piece, Path reference, String title, List<String> dependencies) throws IOException {
        Path home = folder.resolve(GROUP.replace('.', '/')).resolve(piece.name()).resolve(version);
        Map<String, byte[]> jar = Handout.jar(piece);
        String numbered = numbered(piece);
        String stem = piece.name() + '-' + numbered;
        Zip.write(jar, home.resolve(stem + ".jar"));
        Zip.write(Handout.sources(piece), home.resolve(stem + "-sources.jar"));
        Zip.write(reference, "", home.resolve(stem + "-javadoc.jar"));
        Files.writeString(home.resolve(stem + ".pom"), Poms.pom(GROUP, piece.name(), version, title, dependencies));
        if (!numbered.equals(version)) {
            Files.writeString(home.resolve("maven-metadata.xml"), Poms.metadata(GROUP, piece.name(), version, numbered));
        }
        for (Path file : Trees.files(home)) {
            Files.writeString(home.resolve(file + ".sha1"), sha1(Files.readAllBytes(home.resolve(file.toString()))));
        }
    }

    /** The version as the files bear it: a snapshot's with its time. */
    private String numbered(Piece piece) throws IOException {
        if (!version.endsWith("-SNAPSHOT")) {
            return version;
        }
        try (JarFile jar = new JarFile(piece.jar().toFile())) {
            String built = jar.getManifest().getMainAttributes().getValue("Bundle-Version");
            Matcher time = QUALIFIER.matcher(built);
            if (!time.matches()) {
                throw new IllegalStateException(piece.jar() + " has the version " + built + ", which names no time");
            }
            return version.replace("SNAPSHOT", time.group(1) + '.' + time.group(2) + "00-1");
        }
    }

    private static String sha1(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-1").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
