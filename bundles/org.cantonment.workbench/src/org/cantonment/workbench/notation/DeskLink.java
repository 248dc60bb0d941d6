package org.cantonment.workbench.notation;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Judgement;
import org.cantonment.editor.api.TextChange;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.LanguageWorker;
import org.cantonment.notation.text.TextMend;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;

/** The one place where the workbench meets the desk: one desk for each project. */
public final class DeskLink {

    private static final DeskLink INSTANCE = new DeskLink();

    private final NotationHost host = new NotationHost();

    private DeskLink() {
    }

    /** The one link. */
    public static DeskLink instance() {
        return INSTANCE;
    }

    /** The notation as the editor sees it. */
    public NotationHost host() {
        return host;
    }

    /**
     * Checks all books of a project: open ones as they are in their editors, others as they are on the disk.
     * Makes room for whoever types.
     *
     * @param project an open project
     * @return the findings of every book, to come
     */
    public CompletableFuture<Map<IFile, List<Finding>>> check(IProject project) {
        CompletableFuture<Map<IFile, List<Finding>>> answer = new CompletableFuture<>();
        LanguageWorker worker = DocumentModels.all().worker();
        worker.runLater(() -> check(project, worker, answer));
        return answer;
    }

    /**
     * Asks the desk of a project, on the one thread that may look into its books.
     *
     * @param <T> the type of the answer
     * @param project an open project
     * @param question must be short: whoever types waits for it
     * @return the answer to come
     */
    public <T> CompletableFuture<T> ask(IProject project, Function<CampaignDesk, T> question) {
        return DocumentModels.all().worker().ask(() -> question.apply(host.groupOf(project).desk()));
    }

    /**
     * Where a file lies, as the desk names it.
     *
     * @param file a file of a campaign
     * @return its place on the disk
     */
    public static Path path(IFile file) {
        return CampaignGroup.path(file);
    }

    /**
     * What a mend does to its file, as the editor makes it.
     *
     * @param mend a mend of the desk's
     * @return its edits
     */
    public static List<TextChange> changes(TextMend mend) {
        return Findings.changes(mend);
    }

    private void check(IProject project, LanguageWorker worker,
            CompletableFuture<Map<IFile, List<Finding>>> answer) {
        if (answer.isCancelled()) {
            return;
        }
        try {
            Judgement judgement = host.groupOf(project).judge(() -> answer.isCancelled() || worker.urgentWaits());
            Map<IFile, List<Finding>> findings = new LinkedHashMap<>();
            for (IFile book : Books.below(project)) {
                findings.put(book, judgement.of(book));
            }
            answer.complete(findings);
        } catch (CancellationException madeRoom) {
            worker.runLater(() -> check(project, worker, answer));
        } catch (CoreException | RuntimeException failure) {
            answer.completeExceptionally(failure);
        }
    }
}
