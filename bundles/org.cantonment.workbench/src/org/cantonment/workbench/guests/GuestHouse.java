package org.cantonment.workbench.guests;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

import org.cantonment.desk.checks.ChecksFolder;
import org.cantonment.rules.guest.Guests;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;

/**
 * The checks of others in this product: services of installed plug-ins, and jars dropped into the user's own folder. What
 * comes is heard in a thread of its own, so that nobody waits for foreign code.
 */
public final class GuestHouse {

    private static final GuestHouse HOUSE = new GuestHouse(new Guests());

    private final Guests guests;
    private final ExecutorService door = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "checks of others arriving");
        thread.setDaemon(true);
        return thread;
    });
    private Arrivals arrivals;
    private DropFolder dropped;

    /** A house of its own, for tests. */
    GuestHouse(Guests guests) {
        this.guests = guests;
    }

    /** The one of this product. */
    public static GuestHouse instance() {
        return HOUSE;
    }

    /** The checks at hand. */
    public Guests guests() {
        return guests;
    }

    /** Opens the door, takes in what is there already, and lets in what comes later until it is closed. */
    public void open() {
        Bundle own = FrameworkUtil.getBundle(GuestHouse.class);
        open(own.getBundleContext(), ChecksFolder.path());
    }

    synchronized void open(BundleContext context, Path folder) {
        if (arrivals == null) {
            dropped = new DropFolder(context, folder, guests);
            arrivals = new Arrivals(context, guests, dropped, door);
            arrivals.open();
            door.execute(() -> Unresolved.refuse(context, guests));
        }
    }

    /** Takes in the jars of the folder once, as they are now, and waits until all that is there has been heard. */
    public synchronized void settle() {
        door.execute(dropped::lookOnce);
        quiet();
    }

    /** Looks after the folder from now on. */
    public synchronized void watch() {
        dropped.watch(door);
    }

    /** Waits until all that came so far has been heard. */
    void quiet() {
        try {
            // twice: what comes while a jar is taken in is queued behind it
            door.submit(() -> {
            }).get();
            door.submit(() -> {
            }).get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Closes the door: dropped jars leave, and nobody else comes. */
    public synchronized void close() {
        Optional.ofNullable(dropped).ifPresent(DropFolder::close);
        Optional.ofNullable(arrivals).ifPresent(Arrivals::close);
        arrivals = null;
        dropped = null;
    }
}
