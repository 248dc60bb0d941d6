package org.cantonment.rules.guest;

import java.lang.System.Logger;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;

/**
 * Ends a thread that foreign code does not give back, by ever ruder means: asked, stopped, held for good, left alone at
 * the lowest priority. Why so is in docs/decisions/0008.
 */
final class Runaway {

    private static final Logger LOG = System.getLogger(Runaway.class.getName());
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final long ASKED_MILLIS = 20;
    private static final long STOPPED_MILLIS = 50;
    private static final int TRIES = 5;

    private Runaway() {
    }

    /** Returns when it has done what can be done, within a second. */
    static void end(Thread thread) {
        thread.interrupt();
        if (gone(thread, ASKED_MILLIS)) {
            return;
        }
        boolean can = true;
        for (int i = 0; i < TRIES && can; i++) {
            can = rudely(thread, "stop");
            if (can && gone(thread, STOPPED_MILLIS)) {
                return;
            }
        }
        if (!held(thread)) {
            thread.setPriority(Thread.MIN_PRIORITY);
        }
    }

    private static boolean gone(Thread thread, long millis) {
        boolean interrupted = false;
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        for (long left = millis; left > 0; left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime())) {
            try {
                thread.join(left);
                break;
            } catch (InterruptedException later) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return !thread.isAlive();
    }

    // A thread that holds a lock while it stands still would hold up everybody who wants that lock.
    private static boolean held(Thread thread) {
        if (!THREADS.isObjectMonitorUsageSupported()) {
            return false;
        }
        for (int i = 0; i < TRIES; i++) {
            if (!rudely(thread, "suspend")) {
                return false;
            }
            ThreadInfo info = THREADS.getThreadInfo(new long[] { thread.getId() }, true, true)[0];
            if (info == null || info.getLockedMonitors().length == 0 && info.getLockedSynchronizers().length == 0) {
                return true;
            }
            rudely(thread, "resume");
        }
        return false;
    }

    // By name, because later versions of Java have it no more.
    private static boolean rudely(Thread thread, String how) {
        try {
            Thread.class.getMethod(how).invoke(thread);
            return true;
        } catch (ReflectiveOperationException gone) {
            LOG.log(Logger.Level.DEBUG, "This Java does not " + how + " threads", gone);
            return false;
        }
    }
}
