package org.cantonment.rules.guest;

import java.util.List;
import java.util.concurrent.locks.LockSupport;

import org.cantonment.domain.common.CancelToken;

/**
 * Some calls of foreign code, one after another in one visiting thread, while another thread looks on. One errand serves
 * all checks of a list, so that hundreds of them cost one change of threads.
 *
 * @param <T> what a call brings
 */
final class Errand<T> {

    /** The call that is under way, when it began, and how much memory its thread had taken by then. */
    record Step(int number, long began, long bytes) {
    }

    private final List<? extends Call<T>> calls;
    private final List<Outcome<T>> outcomes;
    private final CancelToken stop;
    private final Thread onlooker = Thread.currentThread();
    private volatile Step step;
    private volatile boolean done;
    private volatile boolean left;

    /**
     * @param outcomes where to put what the calls bring, one behind another
     * @param cancel says when no call's answer is wanted any more
     */
    Errand(List<? extends Call<T>> calls, List<Outcome<T>> outcomes, CancelToken cancel) {
        this.calls = calls;
        this.outcomes = outcomes;
        this.stop = () -> left || cancel.cancelled();
    }

    /** Makes the calls, in the visiting thread. */
    void run() {
        long me = Thread.currentThread().getId();
        for (int i = 0; i < calls.size() && !stop.cancelled(); i++) {
            step = new Step(i, System.nanoTime(), Allocation.bytes(me));
            Outcome<T> outcome = make(calls.get(i));
            if (left) {
                return;
            }
            outcomes.add(outcome);
        }
        done = true;
        LockSupport.unpark(onlooker);
    }

    // Foreign words are spoken in the foreign code's own thread: even a message may be without end.
    private Outcome<T> make(Call<T> call) {
        try {
            return new Outcome<>(call.make(stop), null);
        } catch (Throwable failed) {
            try {
                return new Outcome<>(null, Misdeeds.words(failed));
            } catch (Throwable again) {
                return new Outcome<>(null, "failed, and failed again when it was asked how");
            }
        }
    }

    /** The call that is under way; null before the first. */
    Step step() {
        return step;
    }

    /** Whether all calls that will be made have been made. */
    boolean done() {
        return done;
    }

    /** Lets the visiting thread make no further call, and forget what the present one brings. */
    void leave() {
        left = true;
    }
}
