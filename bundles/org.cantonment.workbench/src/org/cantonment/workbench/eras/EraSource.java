package org.cantonment.workbench.eras;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.eras.ChangeAnswer;
import org.cantonment.desk.eras.Changes;
import org.cantonment.desk.eras.ErasText;
import org.cantonment.desk.eras.ListEras;
import org.cantonment.desk.eras.Owned;
import org.cantonment.desk.eras.ShelfAnswer;
import org.cantonment.desk.eras.ShelfRows;
import org.cantonment.desk.eras.ShelfText;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.editor.api.TextChange;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.rules.guest.Guests;
import org.cantonment.workbench.answers.AnswerNode;
import org.cantonment.workbench.guests.GuestHouse;
import org.cantonment.workbench.notation.DeskLink;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Finds the answer in a job: about the list that was asked about last, as it is in its editor. */
final class EraSource {

    /**
     * What a job hands to the view.
     *
     * @param file the list; null if there is none
     * @param text its text, in which the changes are counted
     * @param shelf whether it is of a shelf
     * @param heading what it is, in words
     * @param reply the answer for a chat
     * @param nodes the rows
     */
    record Shown(IFile file, String text, boolean shelf, String heading, String reply, List<AnswerNode> nodes) {
        static Shown nothing(IFile file, String why) {
            return new Shown(file, "", false, why, "", List.of());
        }
    }

    /** What a question stands on. */
    private record Seen(DeskSnapshot snapshot, Optional<Object> book, String text, long guests) {
        boolean same(Seen other) {
            return other != null && guests == other.guests && snapshot.meanings() == other.snapshot.meanings() && book.equals(other.book)
                    && text.equals(other.text);
        }
    }

    /** What is said where there is nothing to look into. */
    static final String NOTHING = "Open a list to see how it stands in every era, or a shelf to see what it can field.";

    /** What is said when a search was given up. */
    static final String STOPPED = "Stopped. It is looked into again once something changes.";

    private static final int SETTLE_MILLIS = 300;

    private final BooleanSupplier seen;
    private final Consumer<Shown> taker;
    private final Runnable documents = this::changed;
    private final Job job = new Job("Looking into eras") {
        @Override
        protected IStatus run(IProgressMonitor monitor) {
            return look(monitor);
        }

        @Override
        public boolean belongsTo(Object family) {
            return ErasView.ID.equals(family);
        }
    };
    private volatile IFile file;
    private volatile int next;
    private volatile long asked;

    // what follows belongs to the job
    private Seen last;
    private IFile lastFile;
    private int lastNext;
    private Shown lastShown = Shown.nothing(null, NOTHING);

    /** Begins to watch; the taker is called on the job's thread. @param seen whether anybody sees what it is told */
    EraSource(BooleanSupplier seen, Consumer<Shown> taker) {
        this.seen = seen;
        this.taker = taker;
        job.setPriority(Job.LONG);
        job.setSystem(true);
        DocumentModels.all().addListener(documents);
    }

    IFile file() {
        return file;
    }

    void ask(IFile newer) {
        if (!Objects.equals(newer, file)) {
            file = newer;
            next = 0;
            changed();
        }
    }

    void askMore() {
        next = Math.min(9, next + 1);
        changed();
    }

    /** Gives the search up; what is shown stays. */
    void stop() {
        if (job.getState() == Job.RUNNING) { // one that only waits would be gone without a word
            job.cancel();
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
        int more = next;
        long number = asked;
        if (now == null || !now.exists()) {
            last = null;
            taker.accept(Shown.nothing(null, NOTHING));
            return Status.OK_STATUS;
        }
        CancelToken cancel = () -> monitor.isCanceled() || asked != number;
        try {
            Path path = DeskLink.path(now);
            Seen seen = DeskLink.instance().ask(now.getProject(), desk -> seen(desk, path)).get();
            if (!(seen.same(last) && now.equals(lastFile) && more == lastNext)) {
                Shown shown = answer(now, path, seen, more, cancel);
                last = seen;
                lastFile = now;
                lastNext = more;
                lastShown = shown;
            }
            taker.accept(lastShown);
            return Status.OK_STATUS;
        } catch (Cancelled given) {
            if (monitor.isCanceled()) { // else a newer question is on its way
                taker.accept(now.equals(lastFile) ? lastShown : Shown.nothing(now, STOPPED));
            }
            return Status.CANCEL_STATUS;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Status.CANCEL_STATUS;
        } catch (ExecutionException failure) {
            return Status.error("The eras could not be looked into", failure.getCause());
        }
    }

    private static Seen seen(CampaignDesk desk, Path path) {
        DeskSnapshot snapshot = desk.snapshot();
        return new Seen(snapshot, Stream.concat(snapshot.meanings().lists().stream(),
                snapshot.meanings().shelves().stream()).map(Object.class::cast)
                .filter(book -> snapshot.file(book).filter(path::equals).isPresent()).findFirst(),
                desk.text(path).orElse(""), guests().version());
    }

    private static Guests guests() {
        return GuestHouse.instance().guests();
    }

    private static Shown answer(IFile file, Path path, Seen seen, int more, CancelToken cancel)
            throws InterruptedException, ExecutionException {
        try {
            Object book = seen.book().orElse(null);
            if (book instanceof Shelf shelf) {
                return shelf(file, seen, ShelfAnswer.of(seen.snapshot().meanings(), shelf, cancel, Progress.SILENT));
            }
            return book instanceof ForceList list ? list(file, path, seen, list, more, cancel)
                    : Shown.nothing(file, file.getName() + " cannot be read yet.");
        } catch (ListEras.Unclear unclear) {
            return Shown.nothing(file, unclear.getMessage());
        }
    }

    private static Shown shelf(IFile file, Seen seen, ShelfAnswer answer) {
        ShelfText text = new ShelfText(answer);
        return new Shown(file, seen.text(), true, text.heading(), text.reply(), EraNodes.of(ShelfRows.of(answer)));
    }

    private static Shown list(IFile file, Path path, Seen seen, ForceList list, int more, CancelToken cancel)
            throws InterruptedException, ExecutionException, ListEras.Unclear {
        ListEras answer = ListEras.of(seen.snapshot().meanings(), guests(), list,
                Owned.of(seen.snapshot().meanings(), list), more, cancel, Progress.SILENT);
        Map<ChangeAnswer, List<TextChange>> edits = DeskLink.instance()
                .ask(file.getProject(), desk -> edits(desk, path, seen, answer)).get();
        String own = (answer.owned().known() ? "" : " " + answer.owned().why())
                + answer.unasked().stream().map(why -> " " + why).collect(Collectors.joining());
        return new Shown(file, seen.text(), false, answer.title() + " (" + file.getName() + ")." + own,
                ErasText.reply(answer), EraNodes.of(answer, change -> edits.getOrDefault(change, List.of())));
    }

    // Only if the text still means what was asked about can its changes be written.
    private static Map<ChangeAnswer, List<TextChange>> edits(CampaignDesk desk, Path path, Seen seen, ListEras answer) {
        Map<ChangeAnswer, List<TextChange>> edits = new HashMap<>();
        desk.document(path).filter(document -> document.text().equals(seen.text())
                && document.meaning(Object.class).equals(seen.book())).ifPresent(document -> answer.eras().stream()
                        .flatMap(era -> List.of(era.atLarge(), era.owned()).stream()).flatMap(Optional::stream)
                        .map(Changes::answers).flatMap(List::stream).forEach(change ->
                                edits.put(change, DeskLink.changes(document.write(change.mend())))));
        return edits;
    }
}
