package org.cantonment.workbench;

import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.equinox.p2.ui.Policy;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceReference;

/** How the platform's installer behaves here: what was installed or removed may be used at once, without another start. */
final class Installing {

    private Installing() {
    }

    /** Tells the installer in the background, where it costs the window no time. */
    static void prepare() {
        Job.createSystem("How to install", monitor -> {
            BundleContext context = FrameworkUtil.getBundle(Installing.class).getBundleContext();
            ServiceReference<Policy> installer = context.getServiceReference(Policy.class);
            if (installer != null) {
                // never given back: a service that nobody holds is made anew, with its own mind
                context.getService(installer).setRestartPolicy(Policy.RESTART_POLICY_PROMPT_RESTART_OR_APPLY);
            }
            return Status.OK_STATUS;
        }).schedule();
    }
}
