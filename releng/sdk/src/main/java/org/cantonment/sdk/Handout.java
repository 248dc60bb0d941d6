package org.cantonment.sdk;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Collectors;

/** What of a piece is handed out. What authors cannot see they cannot lean on by accident. */
final class Handout {

    private static final String EXPORTS = "Export-Package";

    private Handout() {
    }

    /** The classes that are handed out, behind a manifest that exports no others. */
    static Map<String, byte[]> jar(Piece piece) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        try (JarFile jar = new JarFile(piece.jar().toFile())) {
            for (JarEntry entry : jar.stream().toList()) {
                if (entry.getName().endsWith(".class") && entry.getName().startsWith(piece.part())) {
                    entries.put(entry.getName(), jar.getInputStream(entry).readAllBytes());
                }
            }
            entries.put(JarFile.MANIFEST_NAME, manifest(piece, jar.getManifest()));
        }
        return entries;
    }

    private static byte[] manifest(Piece piece, Manifest manifest) throws IOException {
        String begin = piece.part().replace('/', '.');
        // only versions stand behind these packages, and a version has no comma
        String exports = Arrays.stream(manifest.getMainAttributes().getValue(EXPORTS).split(",")).map(String::strip)
                .filter(e -> e.startsWith(begin)).collect(Collectors.joining(","));
        manifest.getMainAttributes().putValue(EXPORTS, exports);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        manifest.write(bytes);
        return bytes.toByteArray();
    }

    /** The sources of the same. */
    static Map<String, byte[]> sources(Piece piece) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        for (Path file : piece.files()) {
            entries.put(piece.sources().relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
        }
        return entries;
    }
}
