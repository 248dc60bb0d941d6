package org.cantonment.workbench.guests;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Origin;
import org.eclipse.core.runtime.ILog;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/**
 * The user's folder of jars with checks: a jar that lies there is a plug-in of the running product, a jar that was replaced
 * is replaced, a jar that is gone is gone. Looks once a second, because not every file system tells of changes; a look is
 * one listing of a small folder.
 */
final class DropFolder {

    /** What the places of dropped plug-ins begin with. */
    static final String LOCATION = "cantonment-checks:";
    /** A jar that cannot be opened is taken for one that is still being copied for so many looks. */
    private static final int PATIENCE = 3;
    private static final long LOOK_MILLIS = 1_000;

    private final BundleContext context;
    private final Path folder;
    private final Guests guests;
    private final Map<Path, Dropped> here = new TreeMap<>();
    private final Map<Bundle, Origin> origins = new ConcurrentHashMap<>();
    private ScheduledExecutorService clock;

    DropFolder(BundleContext context, Path folder, Guests guests) {
        this.context = context;
        this.folder = folder;
        this.guests = guests;
    }

    /** Where a plug-in comes from, if it was dropped. */
    Optional<Origin> origin(Bundle bundle) {
        return Optional.ofNullable(origins.get(bundle));
    }

    /** Takes in what lies there, without waiting for what is still being copied. */
    void lookOnce() {
        look(0);
    }

    /** Looks from now on, in the thread that the executor brings. */
    synchronized void watch(Executor door) {
        if (clock == null) {
            clock = Executors.newSingleThreadScheduledExecutor(work -> {
                Thread thread = new Thread(work, "folder of checks");
                thread.setDaemon(true);
                return thread;
            });
            clock.scheduleWithFixedDelay(() -> door.execute(this::look), 0, LOOK_MILLIS, TimeUnit.MILLISECONDS);
        }
    }

    /** One look. */
    void look() {
        look(PATIENCE);
    }

    private synchronized void look(int patience) {
        List<Path> jars = jars();
        for (Path gone : here.keySet().stream().filter(known -> !jars.contains(known)).toList()) {
            here.remove(gone).leave(origins, guests);
        }
        for (Path jar : jars) {
            JarState state = JarState.of(jar);
            Dropped known = here.get(jar);
            if (state != null && (known == null || !known.is(state))) {
                if (known != null) {
                    known.leave(origins, guests);
                }
                here.put(jar, new Dropped(jar, state));
            }
            Optional.ofNullable(here.get(jar)).ifPresent(dropped -> dropped.enter(context, origins, guests, patience));
        }
    }

    private List<Path> jars() {
        List<Path> jars = new ArrayList<>();
        try (DirectoryStream<Path> children = Files.newDirectoryStream(folder, "*.jar")) {
            children.forEach(jars::add);
        } catch (NoSuchFileException | NotDirectoryException none) {
            return List.of();
        } catch (IOException failed) {
            ILog.of(DropFolder.class).warn("The folder of checks cannot be read: " + folder, failed);
            return List.copyOf(here.keySet());
        }
        jars.sort(null);
        return jars;
    }

    /** Looks no more, and takes everything out. */
    synchronized void close() {
        if (clock != null) {
            clock.shutdownNow();
            clock = null;
        }
        here.values().forEach(dropped -> dropped.leave(origins, guests));
        here.clear();
    }
}
