package org.cantonment.workbench.shopping;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.Status;

/**
 * Writes lists that were composed into files of their own: into the folder {@code lists} of a campaign if there is one, else
 * beside its other books. What is there already stays as it is.
 */
final class ListWriting extends WorkspaceJob {

    private static final String FOLDER = "lists";

    private final IProject project;
    private final Map<String, String> books;
    private final Consumer<String> taker;

    /** @param taker told on the job's thread, in a sentence, what was written and what was not */
    ListWriting(IProject project, Map<String, String> books, Consumer<String> taker) {
        super("Writing lists");
        this.project = project;
        this.books = books;
        this.taker = taker;
        setRule(project);
    }

    @Override
    public IStatus runInWorkspace(IProgressMonitor monitor) {
        IContainer folder = project.getFolder(FOLDER).exists() ? project.getFolder(FOLDER) : project;
        List<String> written = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (Map.Entry<String, String> book : books.entrySet()) {
            IFile file = folder.getFile(new Path(book.getKey()));
            String name = file.getProjectRelativePath().toString();
            if (file.exists()) {
                left.add(name + " is there already and stays as it is.");
                continue;
            }
            try {
                file.create(new ByteArrayInputStream(book.getValue().getBytes(StandardCharsets.UTF_8)), false, monitor);
                written.add(name);
            } catch (CoreException failure) {
                left.add(name + " cannot be written: " + failure.getStatus().getMessage());
            }
        }
        taker.accept((written.isEmpty() ? "" : "Written: " + String.join(", ", written) + ". ") + String.join(" ", left));
        return Status.OK_STATUS;
    }
}
