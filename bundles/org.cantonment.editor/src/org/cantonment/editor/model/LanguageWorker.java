package org.cantonment.editor.model;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

import org.eclipse.core.runtime.ILog;

/** One thread with a queue: what it runs needs no locks of its own. */
public final class LanguageWorker {

    private final ExecutorService executor;
    private final AtomicInteger pending = new AtomicInteger();

    /**
     * Makes the thread; it does not keep the program alive.
     *
     * @param name the thread's name
     */
    public LanguageWorker(String name) {
        executor = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * Queues a task. What it throws is logged.
     *
     * @param task what to do
     */
    public void run(Runnable task) {
        ask(() -> {
            task.run();
            return null;
        }).whenComplete((nothing, failure) -> {
            if (failure != null) {
                ILog.of(LanguageWorker.class).error("A task of the language worker failed", failure);
            }
        });
    }

    /**
     * Queues a question.
     *
     * @param <T> the type of the answer
     * @param question what to find out
     * @return the answer to come; fails with whatever the question throws
     */
    public <T> CompletableFuture<T> ask(Callable<T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        pending.incrementAndGet();
        executor.execute(() -> {
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
        });
        return answer;
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
