package org.cantonment.workbench.shopping;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.shopping.Counter;
import org.cantonment.desk.shopping.Counter.Choice;
import org.cantonment.desk.shopping.Counter.Look;
import org.cantonment.desk.shopping.Counter.Wish;
import org.cantonment.desk.shopping.Unclear;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.workbench.notation.DeskLink;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Asks what to buy, in a job, for whoever's list or shelf was edited last. A newer question gives an older one up; stopping
 * brings the best that was found until then.
 */
final class BuyingSource {

    /**
     * What a job hands to the view.
     *
     * @param busy whether it is still looking
     * @param look the answer; empty as long as there is none for this question
     * @param whose what can be chosen is whose; empty if nobody's
     * @param lists what lists can be chosen
     * @param boxes what boxes can be chosen
     */
    record Shown(boolean busy, String heading, Optional<Look> look, Optional<Id> whose, List<Choice> lists,
            List<Choice> boxes) {

        Shown {
            lists = List.copyOf(lists);
            boxes = List.copyOf(boxes);
        }

        static Shown nothing(String why) {
            return new Shown(false, why, Optional.empty(), Optional.empty(), List.of(), List.of());
        }
    }

    /** What is said where there is nobody to buy for. */
    static final String NOTHING = "Open a player's shelf, or one of his lists, to see what to buy next.";

    private static final int SETTLE_MILLIS = 400;

    private final BooleanSupplier seen;
    private final Consumer<Shown> taker;
    private final Runnable documents = this::changed;
    private final Job job = new Job("Looking for what to buy") {
        @Override
        protected IStatus run(IProgressMonitor monitor) {
            return look(monitor);
        }

        @Override
        public boolean belongsTo(Object family) {
            return BuyingView.ID.equals(family);
        }
    };
    private volatile IFile file;
    private volatile Wish wish;
    private volatile long asked;
    private volatile long stopped = -1;

    // what follows belongs to the job
    private Meanings lastMeanings;
    private IFile lastFile;
    private Wish lastWish;

    /** Begins to watch; the taker is called on the job's thread. @param seen whether anybody sees what it is told */
    BuyingSource(Wish wish, BooleanSupplier seen, Consumer<Shown> taker) {
        this.seen = seen;
        this.wish = wish;
        this.taker = taker;
        job.setPriority(Job.LONG);
        DocumentModels.all().addListener(documents);
    }

    void ask(IFile newer) {
        if (!Objects.equals(newer, file)) {
            file = newer;
            changed();
        }
    }

    void ask(Wish newer) {
        if (!newer.equals(wish)) {
            wish = newer;
            changed();
        }
    }

    /** Ends the search; the best that was found is shown. */
    void stop() {
        stopped = asked;
    }

    void dispose() {
        DocumentModels.all().removeListener(documents);
        asked++;
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
        long number = asked;
        IFile now = file;
        Wish wanted = wish;
        if (now == null || !now.exists()) {
            lastFile = null;
            taker.accept(Shown.nothing(NOTHING));
            return Status.OK_STATUS;
        }
        try {
            Path path = DeskLink.path(now);
            DeskSnapshot snapshot = DeskLink.instance().ask(now.getProject(), desk -> desk.snapshot()).get();
            if (snapshot.meanings() != lastMeanings || !now.equals(lastFile) || !wanted.equals(lastWish)) {
                monitor.beginTask("Looking for what to buy", IProgressMonitor.UNKNOWN);
                Shown shown = answer(snapshot, path, wanted, () -> monitor.isCanceled() || asked != number
                        || stopped == number, (done, of, doing) -> monitor.subTask(of > 0 ? doing + " " + done + " of " + of
                                : doing));
                if (asked == number) {
                    lastMeanings = snapshot.meanings();
                    lastFile = now;
                    lastWish = wanted;
                    taker.accept(shown);
                }
            }
            return Status.OK_STATUS;
        } catch (Cancelled given) {
            return Status.CANCEL_STATUS;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return Status.CANCEL_STATUS;
        } catch (ExecutionException failure) {
            return Status.error("What to buy could not be found out", failure.getCause());
        }
    }

    private Shown answer(DeskSnapshot snapshot, Path path, Wish wanted, CancelToken cancel, Progress progress) {
        Meanings meanings = snapshot.meanings();
        Optional<Player> player = player(snapshot, path);
        if (player.isEmpty()) {
            return Shown.nothing(NOTHING);
        }
        Shown begun = new Shown(true, "Looking for what to buy…", Optional.empty(), Optional.of(player.get().id()),
                Counter.lists(meanings, player.get()), Counter.boxes(meanings));
        taker.accept(begun);
        try {
            Look look = Counter.of(meanings, player.get(), wanted, list -> snapshot.file(list)
                    .map(file -> file.getFileName().toString()).orElse(""), cancel, progress);
            return new Shown(false, look.heading(), Optional.of(look), begun.whose(), begun.lists(), begun.boxes());
        } catch (Unclear unclear) {
            return new Shown(false, unclear.getMessage(), Optional.empty(), begun.whose(), begun.lists(), begun.boxes());
        }
    }

    private static Optional<Player> player(DeskSnapshot snapshot, Path path) {
        Meanings meanings = snapshot.meanings();
        Stream<Id> whose = Stream.concat(
                meanings.lists().stream().filter(list -> is(snapshot, list, path)).map(ForceList::player).flatMap(Optional::stream),
                meanings.shelves().stream().filter(shelf -> is(snapshot, shelf, path)).map(Shelf::owners).flatMap(List::stream));
        return whose.findFirst().flatMap(id -> meanings.campaignOf(id).stream()
                .flatMap(campaign -> campaign.players().stream()).filter(one -> one.id().equals(id)).findFirst());
    }

    private static boolean is(DeskSnapshot snapshot, Object book, Path path) {
        return snapshot.file(book).filter(path::equals).isPresent();
    }
}
