package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The product that this command line belongs to, to run a call in. */
final class Product {
    /** The application that runs a call, in the workbench's bundle. */
    static final String APPLICATION = "org.cantonment.workbench.terminal";
    /** Stands before each word of the call, so that the launcher takes none for its own. */
    static final String MARK = "=";
    private static final int MOST_AT_ONCE = 16;

    private final Path home;
    private final Path launcher;

    private Product(Path home, Path launcher) {
        this.home = home;
        this.launcher = launcher;
    }

    /** The product, if the start script told where it lies. */
    static Optional<Product> here() {
        String home = System.getProperty("cantonment.home");
        return home == null ? Optional.empty() : at(Path.of(home).toAbsolutePath().normalize());
    }

    private static Optional<Product> at(Path home) {
        try (DirectoryStream<Path> jars = Files.newDirectoryStream(home.resolve("plugins"),
                "org.eclipse.equinox.launcher_*.jar")) {
            for (Path jar : jars) {
                return Optional.of(new Product(home, jar));
            }
        } catch (IOException none) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    /** A call that runs in the product. Closing it gives its place free. */
    record Run(Process process, FileChannel place) implements AutoCloseable {
        @Override
        public void close() throws IOException {
            place.close();
        }
    }

    /**
     * Begins a call whose answers go where ours would.
     *
     * @throws IOException if no process can be started
     */
    Run run(String[] args, Path here) throws IOException {
        Path cache = cache();
        Files.createDirectories(cache);
        for (int i = 1; i <= MOST_AT_ONCE; i++) {
            // Two that run at once must not share what OSGi writes down, nor must the workbench's own be touched.
            FileChannel place = FileChannel.open(cache.resolve("place-" + i + ".lock"), StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE);
            if (locked(place)) {
                Path configuration = cache.resolve("place-" + i).resolve("configuration");
                return new Run(new ProcessBuilder(command(configuration, args)).directory(here.toFile()).inheritIO().start(),
                        place);
            }
            place.close();
        }
        throw new IOException("More than " + MOST_AT_ONCE + " calls run at once.");
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException ours) {
            return false;
        }
    }

    private Path cache() {
        String named = System.getenv("CANTONMENT_CACHE");
        Path base = named == null || named.isBlank() ? Path.of(System.getProperty("user.home"), ".cache", "cantonment")
                : Path.of(named);
        return base.resolve("terminal").resolve(Integer.toHexString(home.toString().hashCode()));
    }

    private List<String> command(Path configuration, String[] args) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Dlog4j.defaultInitOverride=true",
                "-Djava.awt.headless=true", "-jar", launcher.toString(), "-install", home.toString(),
                "-configuration", configuration.toString(), "-data", "@none", "-nosplash", "-application", APPLICATION));
        for (String word : args) {
            command.add(MARK + word);
        }
        return command;
    }
}
