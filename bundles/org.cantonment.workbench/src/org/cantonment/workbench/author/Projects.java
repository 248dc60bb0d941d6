package org.cantonment.workbench.author;

import java.nio.file.Path;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;

/** Brings a written project into the workspace. Its files stay in their folder. */
final class Projects {

    private Projects() {
    }

    /** @throws CoreException if the workspace refuses it; the message is fit to be shown */
    static IProject open(Path folder, String name, IProgressMonitor monitor) throws CoreException {
        IWorkspaceRoot root = ResourcesPlugin.getWorkspace().getRoot();
        IProject project = root.getProject(name);
        for (int i = 2; project.exists(); i++) {
            project = root.getProject(name + " " + i);
        }
        IProjectDescription description = root.getWorkspace().newProjectDescription(project.getName());
        description.setLocationURI(folder.toUri());
        project.create(description, monitor);
        project.open(monitor);
        return project;
    }
}
