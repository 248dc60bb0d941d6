package org.cantonment.workbench.opening;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.cantonment.workbench.check.CampaignNature;
import org.cantonment.workbench.check.FindingMarkers;
import org.cantonment.workbench.notation.Books;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.resources.IWorkspaceRunnable;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;

/** Brings a folder of books into the workspace as a project. The books stay where they are. */
public final class CampaignFolder {

    private CampaignFolder() {
    }

    /**
     * Opens a folder as a project; one that is open already is brought up to date.
     *
     * @param folder an existing folder
     * @param monitor may be null
     * @return its project, open and checked
     * @throws CoreException if there is no such folder or the workspace refuses it; the message is fit to
     *             be shown
     */
    public static IProject open(Path folder, IProgressMonitor monitor) throws CoreException {
        Path place = folder.toAbsolutePath().normalize();
        if (!Files.isDirectory(place)) {
            throw new CoreException(Status.error("There is no folder " + place));
        }
        IWorkspace workspace = ResourcesPlugin.getWorkspace();
        IProject[] opened = new IProject[1];
        IWorkspaceRunnable work = within -> opened[0] = openNow(workspace.getRoot(), place, within);
        workspace.run(work, workspace.getRoot(), IWorkspace.AVOID_UPDATE, monitor);
        opened[0].build(IncrementalProjectBuilder.FULL_BUILD, monitor);
        return opened[0];
    }

    private static IProject openNow(IWorkspaceRoot root, Path place, IProgressMonitor monitor) throws CoreException {
        Optional<IProject> known = known(root, place);
        IProject project = known.isPresent() ? known.get() : root.getProject(freeName(root, place));
        if (!project.exists()) {
            IProjectDescription description = root.getWorkspace().newProjectDescription(project.getName());
            description.setLocationURI(place.toUri());
            project.create(description, monitor);
        }
        project.open(monitor);
        IProjectDescription description = project.getDescription();
        if (!List.of(description.getNatureIds()).contains(CampaignNature.ID)) {
            description.setNatureIds(new String[] { CampaignNature.ID });
            project.setDescription(description, monitor);
        }
        project.refreshLocal(IResource.DEPTH_INFINITE, monitor);
        return project;
    }

    private static Optional<IProject> known(IWorkspaceRoot root, Path place) {
        for (IProject project : root.getProjects()) {
            if (project.getLocation() != null && project.getLocation().toPath().equals(place)) {
                return Optional.of(project);
            }
        }
        return Optional.empty();
    }

    private static String freeName(IWorkspaceRoot root, Path place) {
        String name = place.getFileName() == null ? "Campaign" : place.getFileName().toString();
        String free = name;
        for (int i = 2; root.getProject(free).exists(); i++) {
            free = name + " " + i;
        }
        return free;
    }

    /**
     * The book to show first: a force list with a breach, since it shows most at a glance; else any list;
     * else any book.
     *
     * @param project an open project, checked
     * @return the first of them by path; empty if there is no book
     * @throws CoreException if the project cannot be read
     */
    public static Optional<IFile> first(IProject project) throws CoreException {
        List<IFile> books = Books.below(project);
        IFile best = null;
        int bestRank = Integer.MAX_VALUE;
        for (IFile book : books) {
            int rank = rank(book);
            if (rank < bestRank) {
                best = book;
                bestRank = rank;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int rank(IFile book) throws CoreException {
        if (!"list".equals(book.getFileExtension())) {
            return 2;
        }
        int gravest = book.findMaxProblemSeverity(FindingMarkers.TYPE, true, IResource.DEPTH_ZERO);
        return gravest == IMarker.SEVERITY_ERROR ? 0 : 1;
    }
}
