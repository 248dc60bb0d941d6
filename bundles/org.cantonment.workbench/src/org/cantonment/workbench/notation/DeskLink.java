package org.cantonment.workbench.notation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.api.Judgement;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.LanguageWorker;
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
