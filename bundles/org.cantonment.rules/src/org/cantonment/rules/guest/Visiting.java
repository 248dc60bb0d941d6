package org.cantonment.rules.guest;

import java.util.concurrent.locks.LockSupport;

/** A thread that foreign code runs in. Waits for the next errand when it has done one. */
final class Visiting extends Thread {

    private volatile Errand<?> next;
    private volatile boolean dismissed;

    Visiting() {
        super("checks of others");
        setDaemon(true);
        // Whoever looks on sees that the thread is gone, and says so.
        setUncaughtExceptionHandler((thread, failed) -> {
        });
    }

    /** Does an errand. The one before must be done. */
    void begin(Errand<?> errand) {
        next = errand;
        if (getState() == State.NEW) {
            start();
        } else {
            LockSupport.unpark(this);
        }
    }

    /** Lets the thread end as soon as foreign code gives it back. */
    void dismiss() {
        dismissed = true;
        LockSupport.unpark(this);
    }

    @Override
    public void run() {
        while (!dismissed) {
            Errand<?> errand = next;
            if (errand == null) {
                LockSupport.park(this);
                interrupted();
            } else {
                next = null;
                errand.run();
            }
        }
    }
}
