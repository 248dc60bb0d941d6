package org.cantonment.workbench.opening;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.navigator.CommonNavigator;
import org.eclipse.ui.statushandlers.StatusManager;

/** Opens a campaign folder in the background, then shows one of its books. */
public final class Opening extends Job {

    private final Path folder;

    private Opening(Path folder) {
        super("Opening " + folder.getFileName());
        this.folder = folder;
        setUser(true);
    }

    /**
     * Opens a folder.
     *
     * @param folder the folder, as a person wrote it
     */
    public static void begin(String folder) {
        try {
            new Opening(Path.of(folder)).schedule();
        } catch (InvalidPathException senseless) {
            StatusManager.getManager().handle(Status.error("This names no folder: " + folder), StatusManager.SHOW);
        }
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            IProject project = CampaignFolder.open(folder, monitor);
            Optional<IFile> first = CampaignFolder.first(project);
            PlatformUI.getWorkbench().getDisplay().asyncExec(() -> show(project, first));
            return Status.OK_STATUS;
        } catch (CoreException refused) {
            return refused.getStatus();
        }
    }

    private static void show(IProject project, Optional<IFile> first) {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        IWorkbenchPage page = window == null ? null : window.getActivePage();
        if (page == null) {
            return; // the window was closed meanwhile
        }
        if (page.findView(IPageLayout.ID_PROJECT_EXPLORER) instanceof CommonNavigator explorer) {
            explorer.getCommonViewer().expandToLevel(project, 1);
        }
        if (first.isPresent() && page.getEditorReferences().length == 0) {
            try {
                IDE.openEditor(page, first.get());
            } catch (PartInitException failure) {
                StatusManager.getManager().handle(failure.getStatus(), StatusManager.SHOW);
            }
        }
    }
}
