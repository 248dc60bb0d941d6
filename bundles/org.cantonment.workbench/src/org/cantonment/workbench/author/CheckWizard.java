package org.cantonment.workbench.author;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.ui.INewWizard;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.statushandlers.StatusManager;

/** Writes the project of a check of one's own and opens its first page. */
public final class CheckWizard extends Wizard implements INewWizard {

    /** The id under which the platform knows it. */
    public static final String ID = "org.cantonment.workbench.author.check";

    private static final String FIRST_PAGE = "README.md";

    private IWorkbench workbench;
    private Template template;
    private CheckPage page;

    @Override
    public void init(IWorkbench of, IStructuredSelection selection) {
        workbench = of;
        setWindowTitle("A check of your own");
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        try {
            template = Bundled.template();
            page = new CheckPage(template, Bundled.sdk());
            addPage(page);
        } catch (IOException lost) {
            StatusManager.getManager().handle(Status.error(lost.getMessage(), lost), StatusManager.SHOW);
        }
    }

    @Override
    public boolean performFinish() {
        Answers answers = page.answers();
        Path folder = page.chosenFolder();
        IFile[] first = new IFile[1];
        try {
            getContainer().run(true, false, monitor -> first[0] = write(folder, answers, monitor));
        } catch (InvocationTargetException failed) {
            page.setErrorMessage(failed.getCause().getMessage());
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
        try {
            IDE.openEditor(workbench.getActiveWorkbenchWindow().getActivePage(), first[0]);
        } catch (PartInitException refused) {
            StatusManager.getManager().handle(refused.getStatus(), StatusManager.SHOW);
        }
        return true;
    }

    private IFile write(Path folder, Answers answers, IProgressMonitor monitor) throws InvocationTargetException {
        try {
            template.write(folder, answers);
            IProject project = Projects.open(folder, answers.id(), monitor);
            project.refreshLocal(IResource.DEPTH_INFINITE, monitor);
            return project.getFile(FIRST_PAGE);
        } catch (IOException | CoreException refused) {
            throw new InvocationTargetException(refused);
        }
    }
}
