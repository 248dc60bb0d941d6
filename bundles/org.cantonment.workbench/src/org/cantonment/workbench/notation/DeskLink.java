package org.cantonment.workbench.notation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;

import org.cantonment.editor.api.Finding;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.editor.model.LanguageFindings;
import org.cantonment.editor.model.XtextTools;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;

/**
 * The one place where the workbench meets the desk: it turns projects into folders, and the desk's
 * findings into the editor's.
 */
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
     * Checks all books of a project as they are on the disk.
     *
     * @param project an open project
     * @return the findings of every book, to come
     */
    public CompletableFuture<Map<IFile, List<Finding>>> check(IProject project) {
        return DocumentModels.all().worker().ask(() -> checkNow(project));
    }

    private Map<IFile, List<Finding>> checkNow(IProject project) throws CoreException {
        Map<IFile, List<Finding>> findings = new LinkedHashMap<>();
        CampaignGroup group = host.groupOf(project);
        XtextTools tools = XtextTools.of(host.injector());
        for (IFile book : Books.below(project)) {
            XtextResource resource = group.peek(book);
            if (!group.isHeld(book)) {
                resource.relink(); // what it points to may have been read anew
            }
            findings.put(book, LanguageFindings.of(resource, tools, CancelIndicator.NullImpl));
        }
        return findings;
    }

    List<Finding> furtherFindings(IFile file, String text, BooleanSupplier cancelled) {
        return List.of();
    }
}
