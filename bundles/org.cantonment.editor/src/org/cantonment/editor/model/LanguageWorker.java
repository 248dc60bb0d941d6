package org.cantonment.editor.model;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

import org.eclipse.core.runtime.ILog;

/**
 * One thread with a queue: what it runs needs no locks of its own. What is urgent goes first, each kind
 * in the order in which it came.
 */
public final class LanguageWorker {

    private final ThreadPoolExecutor executor;
    private final AtomicInteger pending = new AtomicInteger();
    private final AtomicInteger urgent = new AtomicInteger();
    private final AtomicLong numbers = new AtomicLong();

    private record Task(boolean first, long number, Runnable work) implements Runnable, Comparable<Task> {
        @Override
        public void run() {
            work.run();
        }

        @Override
        public int compareTo(Task other) {
            return first == other.first ? Long.compare(number, other.number) : first ? -1 : 1;
        }
    }

    /**
     * Makes the thread; it does not keep the program alive.
     *
     * @param name the thread's name
     */
    public LanguageWorker(String name) {
        executor = new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new PriorityBlockingQueue<>(), task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * Queues an urgent task. What it throws is logged.
     *
     * @param task what to do
     */
    public void run(Runnable task) {
        logged(ask(() -> {
            task.run();
            return null;
        }));
    }

    /**
     * Queues a task that can wait until nothing urgent does. What it throws is logged.
     *
     * @param task what to do; should make room when {@link #urgentWaits()}
     */
    public void runLater(Runnable task) {
        logged(submit(false, () -> {
            task.run();
            return null;
        }));
    }

    private static void logged(CompletableFuture<?> answer) {
        answer.whenComplete((nothing, failure) -> {
            if (failure != null) {
                ILog.of(LanguageWorker.class).error("A task of the language worker failed", failure);
            }
        });
    }

    /**
     * Queues an urgent question.
     *
     * @param <T> the type of the answer
     * @param question what to find out
     * @return the answer to come; fails with whatever the question throws
     */
    public <T> CompletableFuture<T> ask(Callable<T> question) {
        urgent.incrementAndGet();
        return submit(true, () -> {
            try {
                return question.call();
            } finally {
                urgent.decrementAndGet();
            }
        });
    }

    private <T> CompletableFuture<T> submit(boolean first, Callable<T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        pending.incrementAndGet();
        executor.execute(new Task(first, numbers.incrementAndGet(), () -> {
            T value = null;
            Throwable failure = null;
            try {
                value = question.call();
            } catch (Throwable thrown) { // an Error too must reach the one who asked
                failure = thrown;
            }
            // counted off first: whoever is woken by the answer may ask whether we are idle
            pending.decrementAndGet();
            if (failure == null) {
                answer.complete(value);
            } else {
                answer.completeExceptionally(failure);
            }
        }));
        return answer;
    }

    /**
     * Whether something urgent waits or runs. Asked by what can wait.
     *
     * @return true if room should be made
     */
    public boolean urgentWaits() {
        return urgent.get() > 0;
    }

    /**
     * Whether nothing is queued and nothing runs.
     *
     * @return true if idle at this moment
     */
    public boolean idle() {
        return pending.get() == 0;
    }
}
