package org.cantonment.editor.model;

import java.util.Locale;
import java.util.Optional;

import org.cantonment.editor.api.LanguageHost;
import org.eclipse.core.resources.IFile;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.util.tracker.ServiceTracker;

/** The languages that registered themselves. */
public final class LanguageHosts {

    private final ServiceTracker<LanguageHost, LanguageHost> tracker;

    /** Begins to watch the services. */
    public LanguageHosts() {
        BundleContext context = FrameworkUtil.getBundle(LanguageHosts.class).getBundleContext();
        tracker = new ServiceTracker<>(context, LanguageHost.class, null);
        tracker.open();
    }

    /**
     * The language of a file.
     *
     * @param file any file
     * @return its language, found by its extension
     */
    public Optional<LanguageHost> forFile(IFile file) {
        String extension = file.getFileExtension();
        if (extension == null) {
            return Optional.empty();
        }
        String lower = extension.toLowerCase(Locale.ROOT);
        for (LanguageHost host : tracker.getServices(new LanguageHost[0])) {
            if (host.fileExtensions().contains(lower)) {
                return Optional.of(host);
            }
        }
        return Optional.empty();
    }
}
