package org.cantonment.sdk;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes zips and jars whose bytes depend on their content alone. */
final class Zip {

    private static final LocalDateTime ALWAYS = LocalDateTime.of(2031, 1, 1, 0, 0);

    private Zip() {
    }

    /** Everything in a folder, each name behind a prefix. */
    static void write(Path folder, String prefix, Path zip) throws IOException {
        Map<String, byte[]> entries = new TreeMap<>();
        for (Path file : Trees.files(folder)) {
            entries.put(prefix + file.toString().replace('\\', '/'), Files.readAllBytes(folder.resolve(file.toString())));
        }
        write(entries, zip);
    }

    /** The entries in their order; a manifest goes first, as readers of jars wish it. */
    static void write(Map<String, byte[]> entries, Path zip) throws IOException {
        Files.createDirectories(zip.getParent());
        try (OutputStream out = Files.newOutputStream(zip); ZipOutputStream to = new ZipOutputStream(out)) {
            String manifest = "META-INF/MANIFEST.MF";
            if (entries.containsKey(manifest)) {
                put(to, manifest, entries.get(manifest));
            }
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                if (!entry.getKey().equals(manifest)) {
                    put(to, entry.getKey(), entry.getValue());
                }
            }
        }
    }

    private static void put(ZipOutputStream to, String name, byte[] bytes) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(ALWAYS);
        to.putNextEntry(entry);
        to.write(bytes);
        to.closeEntry();
    }
}
