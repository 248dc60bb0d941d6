package org.cantonment.workbench.check;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.resources.ICommand;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IProjectNature;
import org.eclipse.core.runtime.CoreException;

/** Marks a project as a campaign folder: its books are checked whenever one is saved. */
public final class CampaignNature implements IProjectNature {

    /** The id of the nature. */
    public static final String ID = "org.cantonment.workbench.nature";

    private IProject project;

    @Override
    public void configure() throws CoreException {
        IProjectDescription description = project.getDescription();
        List<ICommand> commands = new ArrayList<>(List.of(description.getBuildSpec()));
        if (commands.stream().noneMatch(command -> CheckBuilder.ID.equals(command.getBuilderName()))) {
            ICommand command = description.newCommand();
            command.setBuilderName(CheckBuilder.ID);
            commands.add(command);
            description.setBuildSpec(commands.toArray(new ICommand[0]));
            project.setDescription(description, null);
        }
    }

    @Override
    public void deconfigure() throws CoreException {
        IProjectDescription description = project.getDescription();
        List<ICommand> commands = new ArrayList<>(List.of(description.getBuildSpec()));
        commands.removeIf(command -> CheckBuilder.ID.equals(command.getBuilderName()));
        description.setBuildSpec(commands.toArray(new ICommand[0]));
        project.setDescription(description, null);
        FindingMarkers.clear(project);
    }

    @Override
    public IProject getProject() {
        return project;
    }

    @Override
    public void setProject(IProject owner) {
        project = owner;
    }
}
