package org.cantonment.workbench.check;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

import org.cantonment.editor.api.Finding;
import org.cantonment.workbench.notation.Books;
import org.cantonment.workbench.notation.DeskLink;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;

/** Checks the books of a project after one was saved, and keeps the findings as markers. */
public final class CheckBuilder extends IncrementalProjectBuilder {

    /** The id of the builder. */
    public static final String ID = "org.cantonment.workbench.check";

    private static final int LOOK_MILLIS = 50;

    @Override
    protected IProject[] build(int kind, Map<String, String> arguments, IProgressMonitor monitor)
            throws CoreException {
        IResourceDelta delta = kind == FULL_BUILD ? null : getDelta(getProject());
        if (delta == null || touchesBook(delta)) {
            Future<Map<IFile, List<Finding>>> answer = DeskLink.instance().check(getProject());
            FindingMarkers.show(getProject(), wait(answer, monitor));
        }
        return new IProject[0];
    }

    @Override
    protected void clean(IProgressMonitor monitor) throws CoreException {
        FindingMarkers.clear(getProject());
    }

    private static boolean touchesBook(IResourceDelta delta) throws CoreException {
        boolean[] touched = { false };
        delta.accept(one -> {
            boolean text = one.getKind() != IResourceDelta.CHANGED || (one.getFlags() & ~IResourceDelta.MARKERS) != 0;
            touched[0] |= text && one.getResource() instanceof IFile file && Books.isBook(file);
            return !touched[0];
        });
        return touched[0];
    }

    private static <T> T wait(Future<T> answer, IProgressMonitor monitor) throws CoreException {
        while (true) {
            try {
                return answer.get(LOOK_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException notYet) {
                if (monitor.isCanceled()) {
                    answer.cancel(true);
                    throw new OperationCanceledException();
                }
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new OperationCanceledException();
            } catch (ExecutionException failure) {
                throw new CoreException(Status.error("The campaign could not be checked", failure.getCause()));
            }
        }
    }
}
