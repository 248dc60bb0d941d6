package org.cantonment.workbench.answers;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.workbench.notation.DeskLink;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Asks about the book that is edited, in a job, each time that something has changed; the newest question stops an older. */
final class BookSource {

    /** Answers about a list or a shelf. */
    @FunctionalInterface
    interface Question {
        /** @throws Cancelled if the token says so */
        BookAnswer answer(Meanings meanings, Object book, CancelToken cancel, Consumer<BookAnswer> meanwhile);
    }

    private static final int SETTLE_MILLIS = 300;

    private final Question question;
    private final String nothing;
    private final BooleanSupplier seen;
    private final Consumer<BookAnswer> taker;
    private final Runnable documents = this::changed;
    private final Job job;
    private volatile IFile file;
    private volatile long asked;

    // what follows belongs to the job
    private Meanings lastMeanings;
    private IFile lastFile;

    /**
     * Begins to watch.
     *
     * @param name what the job is called
     * @param nothing what is said where there is nothing to ask about
     * @param seen whether anybody sees the answers; else nothing is looked at
     * @param taker called on the job's thread
     */
    BookSource(String name, String nothing, Object family, Question question, BooleanSupplier seen,
            Consumer<BookAnswer> taker) {
        this.seen = seen;
        this.question = question;
        this.nothing = nothing;
        this.taker = taker;
        job = new Job(name) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                return look(monitor);
            }

            @Override
            public boolean belongsTo(Object other) {
                return family.equals(other);
            }
        };
        job.setPriority(Job.LONG);
        job.setSystem(true);
        DocumentModels.all().addListener(documents);
    }

    void ask(IFile newer) {
        if (!Objects.equals(newer, file)) {
            file = newer;
            changed();
        }
    }

    void dispose() {
        DocumentModels.all().removeListener(documents);
        job.cancel();
    }

    private void changed() {
        asked++;
        if (seen.getAsBoolean()) {
            wake();
        }
    }

    /** Looks again if anything has changed since the last look. */
    void wake() {
        job.schedule(SETTLE_MILLIS);
    }

    private IStatus look(IProgressMonitor monitor) {
        IFile now = file;
        long number = asked;
        if (now == null || !now.exists()) {
            lastFile = null;
            taker.accept(BookAnswer.nothing(nothing));
            return Status.OK_STATUS;
        }
        CancelToken cancel = () -> monitor.isCanceled() || asked != number;
        try {
            Path path = DeskLink.path(now);
            DeskSnapshot snapshot = DeskLink.instance().ask(now.getProject(), desk -> desk.snapshot()).get();
            if (snapshot.meanings() != lastMeanings || !now.equals(lastFile)) {
                BookAnswer answer = book(snapshot, path).map(book -> question.answer(snapshot.meanings(), book, cancel, taker))
                        .orElseGet(() -> BookAnswer.nothing(now.getName() + " cannot be read yet."));
                lastMeanings = snapshot.meanings();
                lastFile = now;
                taker.accept(answer);
            }
            return Status.OK_STATUS;
        } catch (Cancelled given) {
            return Status.CANCEL_STATUS;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Status.CANCEL_STATUS;
        } catch (ExecutionException failure) {
            return Status.error(job.getName() + " failed", failure.getCause());
        }
    }

    private static Optional<Object> book(DeskSnapshot snapshot, Path path) {
        return Stream.concat(snapshot.meanings().lists().stream(), snapshot.meanings().shelves().stream())
                .map(Object.class::cast).filter(book -> snapshot.file(book).filter(path::equals).isPresent()).findFirst();
    }
}
