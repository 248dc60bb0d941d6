package org.cantonment.workbench.notation;

import java.util.Collection;
import java.util.Map;
import java.util.function.Supplier;

import org.cantonment.editor.model.DocumentModels;
import org.cantonment.workbench.check.CheckBuilder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IncrementalProjectBuilder;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

/** Has all campaigns judged again when checks of others came or went: open books at once, markers behind them. */
final class JudgingAnew extends WorkspaceJob {

    /** Several checks of one plug-in come one behind another. */
    private static final long SOON_MILLIS = 100;

    private final Supplier<Map<IProject, CampaignGroup>> groups;

    JudgingAnew(Supplier<Map<IProject, CampaignGroup>> groups) {
        super("Checking again with the checks of plug-ins");
        this.groups = groups;
        setSystem(true);
    }

    /** May be called from any thread, and often. */
    void soon() {
        schedule(SOON_MILLIS);
    }

    @Override
    public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
        Map<IProject, CampaignGroup> all = groups.get();
        Collection<CampaignGroup> each = all.values();
        each.forEach(DocumentModels.all()::judgeLater);
        for (IProject project : all.keySet()) {
            if (project.isAccessible()) {
                project.build(IncrementalProjectBuilder.FULL_BUILD, CheckBuilder.ID, Map.of(), monitor);
            }
        }
        return Status.OK_STATUS;
    }
}
