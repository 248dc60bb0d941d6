package org.cantonment.workbench.answers;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.workbench.notation.DeskLink;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Asks about the list or shelf that is edited, in a job, each time that something has changed; the newest question gives an
 * older one up.
 *
 * @param <W> what is asked beside the file
 * @param <A> what the view is told
 */
public abstract class AnswerSource<W, A> {

    /**
     * What an answer stands on; as long as it is the same nothing is asked again.
     *
     * @param <W> what is asked beside the file
     * @param file the file of the book
     * @param path the same on the desk
     * @param wanted what is asked beside the file
     * @param snapshot all books as they were
     * @param more whatever else the answer hangs on
     */
    public record Grounds<W>(IFile file, Path path, W wanted, DeskSnapshot snapshot, Object more) {

        /** The list or shelf that stands in the file; empty where it means neither. */
        public Optional<Object> book() {
            return Stream.concat(snapshot.meanings().lists().stream(), snapshot.meanings().shelves().stream())
                    .map(Object.class::cast).filter(book -> snapshot.file(book).filter(path::equals).isPresent()).findFirst();
        }

        private boolean same(Grounds<W> other) {
            return other != null && file.equals(other.file) && wanted.equals(other.wanted)
                    && snapshot.meanings() == other.snapshot.meanings() && more.equals(other.more);
        }
    }

    private static final int SETTLE_MILLIS = 300;

    private final BooleanSupplier seen;
    private final Consumer<A> taker;
    private final Runnable documents = this::changed;
    private final Job job;
    private volatile IFile file;
    private volatile W wanted;
    private volatile long asked;
    private volatile long stopped = -1;
    private volatile boolean disposed;

    // what follows belongs to the job
    private Grounds<W> last;
    private A lastAnswer;

    /**
     * Begins to watch.
     *
     * @param name what the job is called
     * @param family what the job belongs to
     * @param wanted what is asked beside the file, at first
     * @param seen whether anybody sees the answers; else nothing is looked at
     * @param taker told on the job's thread
     */
    protected AnswerSource(String name, Object family, W wanted, BooleanSupplier seen, Consumer<A> taker) {
        this.wanted = wanted;
        this.seen = seen;
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

    /** From now on the progress view shows the search. */
    protected final void showProgress() {
        job.setSystem(false);
    }

    /** What is said where there is nothing to ask about. */
    protected abstract A nothing();

    /** What is said of a search that was stopped before it had anything to tell. */
    protected abstract A stopped(IFile now);

    /** What else an answer hangs on, beside the meaning of all books; asked on the desk's thread. */
    protected Object more(CampaignDesk desk, Path path) {
        return "";
    }

    /**
     * Answers, on the job's thread.
     *
     * @throws Cancelled if the token says so and there is nothing to tell
     * @throws InterruptedException if the desk was waited for and the job is to end
     * @throws ExecutionException if the desk fails
     */
    protected abstract A answer(Grounds<W> grounds, CancelToken cancel, Progress progress, Consumer<A> meanwhile)
            throws InterruptedException, ExecutionException;

    /** The file that was asked about last; null if there is none. */
    public final IFile file() {
        return file;
    }

    /** Asks the same about a file; null for none. */
    public final void ask(IFile newer) {
        ask(newer, wanted);
    }

    /** Asks something about a file, unless it is the file that was asked about last; null for none. */
    protected final void ask(IFile newer, W about) {
        if (!Objects.equals(newer, file)) {
            file = newer;
            wanted = about;
            changed();
        }
    }

    /** Asks something else about the same file. */
    public final void want(W newer) {
        if (!newer.equals(wanted)) {
            wanted = newer;
            changed();
        }
    }

    /** What is asked beside the file. */
    protected final W wanted() {
        return wanted;
    }

    /** Ends the search: the best so far is told if there is such a thing, else what was told before. */
    public final void stop() {
        stopped = asked;
    }

    /** Looks again if anything has changed since the last look. */
    public final void wake() {
        job.schedule(SETTLE_MILLIS);
    }

    /** Ends all; nothing is told any more. */
    public final void dispose() {
        disposed = true;
        DocumentModels.all().removeListener(documents);
        job.cancel();
    }

    private void changed() {
        asked++;
        if (seen.getAsBoolean()) {
            wake();
        }
    }

    private void tell(A answer) {
        if (!disposed) {
            taker.accept(answer);
        }
    }

    private IStatus look(IProgressMonitor monitor) {
        long number = asked;
        IFile now = file;
        if (now == null || !now.exists()) {
            last = null;
            tell(nothing());
            return Status.OK_STATUS;
        }
        try {
            look(now, number, monitor);
            return Status.OK_STATUS;
        } catch (Cancelled given) {
            if (asked == number) { // else a newer question is on its way
                tell(last != null && now.equals(last.file()) ? lastAnswer : stopped(now));
            }
            return Status.CANCEL_STATUS;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return Status.CANCEL_STATUS;
        } catch (ExecutionException failure) {
            return Status.error(job.getName() + " failed", failure.getCause());
        }
    }

    private void look(IFile now, long number, IProgressMonitor monitor) throws InterruptedException, ExecutionException {
        Path path = DeskLink.path(now);
        W wish = wanted;
        Grounds<W> grounds = DeskLink.instance().ask(now.getProject(),
                desk -> new Grounds<>(now, path, wish, desk.snapshot(), more(desk, path))).get();
        if (!grounds.same(last)) {
            monitor.beginTask(job.getName(), IProgressMonitor.UNKNOWN);
            A answer = answer(grounds, () -> monitor.isCanceled() || asked != number || stopped == number,
                    (done, of, doing) -> monitor.subTask(of > 0 ? doing + " " + done + " of " + of : doing), this::tell);
            if (asked != number) {
                return;
            }
            last = grounds;
            lastAnswer = answer;
        }
        tell(lastAnswer);
    }
}
