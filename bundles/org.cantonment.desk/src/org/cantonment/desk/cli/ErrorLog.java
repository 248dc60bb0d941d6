package org.cantonment.desk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;

/** Where faults of the program are written down, so that nobody has to read them on a terminal. */
final class ErrorLog {
    private ErrorLog() {
    }

    /**
     * Writes a fault down.
     *
     * @return the file it stands in; empty if none could be written
     */
    static Optional<Path> note(Throwable fault, String[] args) {
        StringWriter text = new StringWriter();
        PrintWriter writer = new PrintWriter(text);
        writer.println(Instant.now() + " cantonment " + Version.TEXT + " " + String.join(" ", args));
        writer.println("Java " + System.getProperty("java.version") + ", " + System.getProperty("os.name"));
        for (Throwable at = fault; at != null; at = at.getCause() == at ? null : at.getCause()) {
            writer.println(at);
            for (StackTraceElement element : at.getStackTrace()) {
                writer.println("  at " + element);
            }
        }
        writer.flush();
        return write(folder(), text.toString()).or(() -> write(Path.of(System.getProperty("java.io.tmpdir")),
                text.toString()));
    }

    private static Path folder() {
        String state = System.getenv("XDG_STATE_HOME");
        Path base = state != null && !state.isBlank() ? Path.of(state)
                : Path.of(System.getProperty("user.home"), ".local", "state");
        return base.resolve("cantonment");
    }

    private static Optional<Path> write(Path folder, String text) {
        try {
            Files.createDirectories(folder);
            Path file = folder.resolve("cantonment.log");
            Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
            return Optional.of(file);
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
