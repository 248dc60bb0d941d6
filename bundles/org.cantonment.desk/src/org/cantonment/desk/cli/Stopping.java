package org.cantonment.desk.cli;

import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import org.cantonment.domain.common.CancelToken;

/**
 * Ends a search after so many seconds, or when whoever asked has enough of waiting (Ctrl+C): the best so far is then told
 * before the program ends.
 */
final class Stopping implements CancelToken, AutoCloseable {
    /** An answer that is not told by then is not told. */
    private static final int PATIENCE = 10;

    private final CountDownLatch told = new CountDownLatch(1);
    private final Thread hook = new Thread(this::stopAndWait, "stopping");
    private final long end;
    private final boolean endless;
    private volatile boolean stopped;

    private Stopping(OptionalInt seconds) {
        endless = seconds.isEmpty();
        end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds.orElse(0));
    }

    /** Begins to count. */
    static Stopping after(OptionalInt seconds) {
        Stopping stopping = new Stopping(seconds);
        Runtime.getRuntime().addShutdownHook(stopping.hook);
        return stopping;
    }

    @Override
    public boolean cancelled() {
        return stopped || !endless && System.nanoTime() - end >= 0;
    }

    private void stopAndWait() {
        stopped = true;
        try {
            told.await(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The answer is told. */
    @Override
    public void close() {
        told.countDown();
        if (!stopped) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                stopped = true; // the program is ending already, and the hook with it
            }
        }
    }
}
