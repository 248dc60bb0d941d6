package org.cantonment.workbench.adopting;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.adopting.AdoptionText;
import org.cantonment.desk.adopting.Proposal;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Progress;
import org.cantonment.editor.api.Elsewhere;
import org.cantonment.editor.api.TextChange;
import org.cantonment.workbench.answers.AnswerNode;
import org.cantonment.workbench.notation.DeskLink;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Adopts the book in the campaign as it is saved, on a desk of its own, and tells what came of it. */
final class AdoptingJob extends Job {

    /**
     * A file that has to be changed to adopt the book.
     *
     * @param where the file and its text as saved
     * @param changes what to write
     */
    record Adopting(Elsewhere where, List<TextChange> changes) {
    }

    /**
     * What the view shows.
     *
     * @param heading what it is, in words
     * @param looking whether the answer is still to come
     * @param adopting what has to be written, if anything
     * @param nodes the rows
     */
    record Shown(String heading, boolean looking, List<Adopting> adopting, List<AnswerNode> nodes) {
        static Shown nothing(String why) {
            return new Shown(why, false, List.of(), List.of());
        }

        static Shown looking(String howFar) {
            return new Shown(howFar, true, List.of(), List.of());
        }
    }

    private static final long TELL_NANOS = 100_000_000L;

    private final OwnDesk own;
    private final IFile file;
    private final String text;
    private final Consumer<Shown> taker;

    /**
     * A question.
     *
     * @param own where it is tried
     * @param file a book of rules
     * @param text its text as it is in the editor
     * @param taker called on the job's thread, also now and then with how far it is
     */
    AdoptingJob(OwnDesk own, IFile file, String text, Consumer<Shown> taker) {
        super("Looking before adopting " + file.getName());
        this.own = own;
        this.file = file;
        this.text = text;
        this.taker = taker;
        setPriority(LONG);
    }

    @Override
    public boolean belongsTo(Object family) {
        return AdoptingView.ID.equals(family);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        CancelToken cancel = monitor::isCanceled;
        Path folder = file.getProject().getLocation().toPath();
        try {
            OwnDesk.Looked looked = own.look(folder, DeskLink.path(file), text, cancel, telling());
            taker.accept(new Shown(AdoptionText.heading(looked.proposal()), false,
                    adopting(looked.desk(), looked.proposal()), AdoptingNodes.of(looked.proposal().adoption())));
            return Status.OK_STATUS;
        } catch (Cancelled given) {
            taker.accept(Shown.nothing("Stopped."));
            return Status.CANCEL_STATUS;
        } catch (Proposal.Refused refused) {
            taker.accept(Shown.nothing(refused.getMessage()));
            return Status.OK_STATUS;
        }
    }

    private Progress telling() {
        long[] next = { System.nanoTime() };
        return (done, of, doing) -> {
            if (System.nanoTime() - next[0] >= 0) {
                next[0] = System.nanoTime() + TELL_NANOS;
                taker.accept(Shown.looking(doing + (of > 0 ? " " + done + " of " + of : "")));
            }
        };
    }

    // The desk holds the proposed texts by now; the edits are counted in those that are saved.
    private static List<Adopting> adopting(CampaignDesk desk, Proposal proposal) {
        return proposal.played().stream().map(played -> {
            String now = desk.text(played.file()).orElse("");
            int end = played.change().offset() + played.change().text().length();
            String saved = now.substring(0, played.change().offset()) + now.substring(end);
            return new Adopting(new Elsewhere(played.file().toUri().toString(), saved), List.of(new TextChange(
                    played.change().offset(), played.change().length(), played.change().text())));
        }).toList();
    }
}
