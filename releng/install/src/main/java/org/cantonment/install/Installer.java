package org.cantonment.install;

import java.io.IOException;
import java.net.URI;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.equinox.internal.provisional.configurator.Configurator;
import org.eclipse.equinox.p2.core.IProvisioningAgent;
import org.eclipse.equinox.p2.metadata.IInstallableUnit;
import org.eclipse.equinox.p2.operations.InstallOperation;
import org.eclipse.equinox.p2.operations.ProfileChangeOperation;
import org.eclipse.equinox.p2.operations.ProvisioningSession;
import org.eclipse.equinox.p2.operations.UninstallOperation;
import org.eclipse.equinox.p2.query.QueryUtil;
import org.eclipse.equinox.p2.repository.metadata.IMetadataRepositoryManager;
import org.osgi.framework.BundleContext;

/** The operations behind the install dialog. */
final class Installer {

    private final IProvisioningAgent agent;
    private final IProgressMonitor monitor;

    Installer(IProvisioningAgent agent, IProgressMonitor monitor) {
        this.agent = agent;
        this.monitor = monitor;
    }

    /** The one feature of a site. */
    IInstallableUnit find(URI site) throws CoreException {
        var found = agent.getService(IMetadataRepositoryManager.class).loadRepository(site, monitor)
                .query(QueryUtil.createIUGroupQuery(), monitor).toUnmodifiableSet();
        if (found.size() != 1) {
            throw new IllegalStateException(site + " has not one feature but " + found);
        }
        return found.iterator().next();
    }

    void install(IInstallableUnit feature, URI site) throws CoreException {
        InstallOperation operation = new InstallOperation(new ProvisioningSession(agent), List.of(feature));
        operation.getProvisioningContext().setMetadataRepositories(site);
        operation.getProvisioningContext().setArtifactRepositories(site);
        run(operation);
    }

    void uninstall(IInstallableUnit feature) throws CoreException {
        run(new UninstallOperation(new ProvisioningSession(agent), List.of(feature)));
    }

    private void run(ProfileChangeOperation operation) throws CoreException {
        check(operation.resolveModal(monitor));
        check(operation.getProvisioningJob(monitor).runModal(monitor));
    }

    private static void check(IStatus status) throws CoreException {
        if (status.matches(IStatus.ERROR | IStatus.CANCEL)) {
            throw new CoreException(status);
        }
    }

    /** What the dialog calls 'apply changes': no restart. */
    static void apply(BundleContext context) throws IOException {
        context.getService(context.getServiceReference(Configurator.class)).applyConfiguration();
    }
}
