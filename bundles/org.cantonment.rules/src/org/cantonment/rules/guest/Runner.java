package org.cantonment.rules.guest;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.locks.LockSupport;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;

/**
 * Runs foreign code beside the thread that asks, and looks on: a call that works too long, waits too long or takes too much
 * memory is ended, and the next one goes on in another thread. Serves several threads at once.
 */
final class Runner {

    /** How often it looks at the clock and at the memory. */
    private static final long GLANCE = Duration.ofMillis(5).toNanos();
    /** A call that only waits may do so for so many times as long as one may work: a busy machine is not its fault. */
    private static final int WAITS = 3;
    private static final int MOST_IDLE = 2;
    private static final long LEAST_MEMORY = 32L << 20;
    private static final long MOST_MEMORY = 256L << 20;

    private record Misdeed(int call, String words) {
    }

    private final Deque<Visiting> idle = new ArrayDeque<>();
    private final long patience;
    private final long memory = Math.min(MOST_MEMORY, Math.max(LEAST_MEMORY, Runtime.getRuntime().maxMemory() / 8));

    /** @param patience how long one call may work */
    Runner(Duration patience) {
        this.patience = patience.toNanos();
    }

    /**
     * Makes the calls one after another.
     *
     * @return what each brought, in their order
     * @throws Cancelled if the token says so; a call that is under way is given its time all the same
     */
    <T> List<Outcome<T>> run(List<? extends Call<T>> calls, CancelToken cancel) {
        List<Outcome<T>> all = new ArrayList<>();
        while (all.size() < calls.size()) {
            cancel.check();
            List<Outcome<T>> some = Collections.synchronizedList(new ArrayList<>());
            Errand<T> errand = new Errand<>(calls.subList(all.size(), calls.size()), some, cancel);
            Visiting thread = take();
            thread.begin(errand);
            Misdeed misdeed = watch(thread, errand);
            if (misdeed == null) {
                give(thread);
                all.addAll(some);
            } else {
                errand.leave();
                all.addAll(List.copyOf(some).subList(0, misdeed.call()));
                all.add(new Outcome<>(null, misdeed.words()));
                thread.dismiss();
                Runaway.end(thread);
            }
        }
        cancel.check();
        return all;
    }

    /** Waits until the errand is done. @return what the call under way did that it must be ended for; null if nothing */
    private Misdeed watch(Visiting thread, Errand<?> errand) {
        boolean interrupted = false;
        Errand.Step seen = null;
        long worked = 0;
        Misdeed misdeed = null;
        while (!errand.done() && misdeed == null) {
            LockSupport.parkNanos(errand, GLANCE);
            interrupted |= Thread.interrupted();
            Errand.Step step = errand.step();
            if (step != null && step != seen) {
                seen = step;
                worked = Allocation.worked(thread.getId(), step.began());
            } else if (step != null && !errand.done()) {
                misdeed = misdeed(thread, step, worked);
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return misdeed;
    }

    private Misdeed misdeed(Visiting thread, Errand.Step step, long workedBefore) {
        String words = words(thread, step, workedBefore);
        return words == null ? null : new Misdeed(step.number(), words);
    }

    private String words(Visiting thread, Errand.Step step, long workedBefore) {
        long now = System.nanoTime();
        long passed = now - step.began();
        if (Allocation.bytes(thread.getId()) - step.bytes() > memory) {
            return "took more than " + (memory >> 20) + " MB of memory for one answer";
        }
        if (!thread.isAlive()) {
            return "ended the thread that it was asked in";
        }
        if (passed > WAITS * patience) {
            return "gave no answer within " + WAITS * patience / 1_000_000 + " ms";
        }
        if (passed > patience && Allocation.worked(thread.getId(), now) - workedBefore > patience - 2 * GLANCE) {
            return "took longer than " + patience / 1_000_000 + " ms";
        }
        return null;
    }

    private Visiting take() {
        synchronized (idle) {
            for (Visiting thread = idle.poll(); thread != null; thread = idle.poll()) {
                if (thread.isAlive()) {
                    return thread;
                }
            }
        }
        return new Visiting();
    }

    private void give(Visiting thread) {
        synchronized (idle) {
            if (idle.size() < MOST_IDLE) {
                idle.push(thread);
                return;
            }
        }
        thread.dismiss();
    }
}
