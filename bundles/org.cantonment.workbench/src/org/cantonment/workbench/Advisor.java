package org.cantonment.workbench;

import java.net.URL;
import java.util.Map;
import java.util.Optional;

import org.cantonment.workbench.opening.Opening;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;
import org.osgi.framework.Bundle;

/** What the workbench is made of when it opens. */
final class Advisor extends WorkbenchAdvisor {

    /** Images that views of the platform expect from whoever builds the window. */
    private static final Map<String, String> PLATFORM_IMAGES = Map.ofEntries(
            Map.entry(IDE.SharedImages.IMG_OBJ_PROJECT, "obj16/prj_obj"),
            Map.entry(IDE.SharedImages.IMG_OBJ_PROJECT_CLOSED, "obj16/cprj_obj"),
            Map.entry(IDE.SharedImages.IMG_OPEN_MARKER, "elcl16/gotoobj_tsk"),
            Map.entry(IDE.SharedImages.IMG_OBJS_TASK_TSK, "obj16/taskmrk_tsk"),
            Map.entry(IDE.SharedImages.IMG_OBJS_BKMRK_TSK, "obj16/bkmrk_tsk"),
            Map.entry("IMG_ETOOL_PROBLEM_CATEGORY", "etool16/problem_category"),
            Map.entry("IMG_OBJS_ERROR_PATH", "obj16/error_tsk"),
            Map.entry("IMG_OBJS_WARNING_PATH", "obj16/warn_tsk"),
            Map.entry("IMG_OBJS_INFO_PATH", "obj16/info_tsk"));

    private final Optional<String> campaign;

    /** An advisor that opens a campaign folder at the start, if one is named. */
    Advisor(Optional<String> campaign) {
        this.campaign = campaign;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
        IDE.registerAdapters();
        Bundle ide = Platform.getBundle("org.eclipse.ui.ide");
        PLATFORM_IMAGES.forEach((symbol, path) -> {
            URL url = FileLocator.find(ide, new Path("icons/full/" + path + ".svg"), null);
            if (url != null) {
                configurer.declareImage(symbol, ImageDescriptor.createFromURL(url), true);
            }
        });
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new WindowAdvisor(configurer);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return CampaignPerspective.ID;
    }

    @Override
    public String getMainPreferencePageId() {
        return "org.eclipse.ui.preferencePages.Workbench";
    }

    @Override
    public IAdaptable getDefaultPageInput() {
        return ResourcesPlugin.getWorkspace().getRoot();
    }

    @Override
    public void postStartup() {
        Installing.prepare();
        campaign.ifPresent(Opening::begin);
    }

    @Override
    public boolean preShutdown() {
        return true;
    }

    @Override
    public void postShutdown() {
        IWorkspace workspace = ResourcesPlugin.getWorkspace();
        try {
            workspace.save(true, null);
        } catch (CoreException failure) {
            ILog.of(Advisor.class).error("The workspace could not be saved", failure);
        }
    }
}
