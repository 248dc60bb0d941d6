package org.cantonment.install;

import java.net.URI;
import java.util.Arrays;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.equinox.p2.core.IProvisioningAgent;
import org.eclipse.equinox.p2.metadata.IInstallableUnit;
import org.osgi.framework.BundleContext;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceListener;

/**
 * Installs a site's feature into the product that runs, counts the checks at each step, and takes it out again. Says each
 * step in a line, with how many the plug-ins promise: {@code before 0 of 0}, {@code installed 1 of 1}.
 *
 * <p>The argument {@code -site} names the site; without it the checks are counted and nothing is changed.
 */
public final class Probe implements IApplication {

    private static final String CHECK = "org.cantonment.rules.api.RuleCheck";
    private static final long MOST_SECONDS = 30;
    private static final long GLANCE_MILLIS = 50;

    private final BundleContext context = FrameworkUtil.getBundle(Probe.class).getBundleContext();

    @Override
    public Object start(IApplicationContext application) throws Exception {
        String[] arguments = (String[]) application.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        say("before");
        for (int i = 0; i + 1 < arguments.length; i++) {
            if (arguments[i].equals("-site")) {
                visit(URI.create(arguments[i + 1]));
            }
        }
        return EXIT_OK;
    }

    private void visit(URI site) throws Exception {
        Installer installer = new Installer(service(IProvisioningAgent.class, IProvisioningAgent.SERVICE_CURRENT),
                new NullProgressMonitor());
        IInstallableUnit feature = installer.find(site);
        installer.install(feature, site);
        Installer.apply(context);
        say("installed");
        installer.uninstall(feature);
        Installer.apply(context);
        say("uninstalled");
    }

    /** Services come and go on a thread of the platform's own: waits until there are as many as the plug-ins promise. */
    private void say(String when) throws InvalidSyntaxException, InterruptedException {
        Semaphore changes = new Semaphore(0);
        ServiceListener listener = event -> changes.release();
        context.addServiceListener(listener, "(objectClass=" + CHECK + ')');
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        while (checks() != promised() && System.nanoTime() < end) {
            changes.tryAcquire(GLANCE_MILLIS, TimeUnit.MILLISECONDS);
        }
        context.removeServiceListener(listener);
        System.out.println(when + ' ' + checks() + " of " + promised());
    }

    private int checks() throws InvalidSyntaxException {
        var found = context.getAllServiceReferences(CHECK, null);
        return found == null ? 0 : found.length;
    }

    private long promised() {
        return Arrays.stream(context.getBundles()).map(b -> b.getHeaders("").get(Constants.PROVIDE_CAPABILITY))
                .filter(provides -> provides != null && provides.contains(CHECK)).count();
    }

    private <T> T service(Class<T> type, String which) throws InvalidSyntaxException {
        return context.getServiceReferences(type, '(' + which + "=true)").stream().map(context::getService).findFirst()
                .orElseThrow(() -> new IllegalStateException("There is no " + type.getName()));
    }

    @Override
    public void stop() {
        // ends by itself
    }
}
