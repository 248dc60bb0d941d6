package org.cantonment.generator;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** Remembers from which inputs the generated files were made, and which files these were. */
final class Stamp {

    private final Path root;
    private final Path file;
    private final List<Path> inputs;
    private final List<Path> outputs;

    Stamp(Path root, Path file, List<Path> inputs, List<Path> outputs) {
        this.root = root;
        this.file = file;
        this.inputs = inputs;
        this.outputs = outputs;
    }

    /** Whether inputs and outputs are as they were when the stamp was set. */
    boolean holds() throws IOException {
        return Files.exists(file) && Files.readString(file).equals(text());
    }

    /** A generator that dies half-way must not leave an old stamp behind. */
    void lift() throws IOException {
        Files.deleteIfExists(file);
    }

    void set() throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text());
    }

    private String text() throws IOException {
        MessageDigest made = sha();
        for (Path input : files(inputs)) {
            made.update(name(input));
            made.update(Files.readAllBytes(input));
        }
        MessageDigest listed = sha();
        for (Path output : files(outputs)) {
            listed.update(name(output));
            listed.update(Long.toString(Files.size(output)).getBytes(StandardCharsets.UTF_8));
        }
        return "from " + hex(made) + "\nto " + hex(listed) + "\n";
    }

    private byte[] name(Path path) {
        return root.relativize(path).toString().replace('\\', '/').getBytes(StandardCharsets.UTF_8);
    }

    private static List<Path> files(List<Path> places) throws IOException {
        List<Path> found = new ArrayList<>();
        for (Path place : places) {
            if (Files.exists(place)) {
                try (var all = Files.walk(place)) {
                    all.filter(Files::isRegularFile).forEach(found::add);
                }
            }
        }
        found.sort(null);
        return found;
    }

    private static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String hex(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }
}
