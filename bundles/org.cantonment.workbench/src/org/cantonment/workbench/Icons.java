package org.cantonment.workbench;

import java.net.URL;
import java.util.Locale;

import org.cantonment.editor.api.Severity;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Path;
import org.eclipse.jface.resource.ImageDescriptor;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** The workbench's own icons, and the signs of the severities, which the editor draws. */
public final class Icons {

    private Icons() {
    }

    /**
     * An icon of the workbench.
     *
     * @param name its file name without {@code .svg}
     * @return the icon, or null if there is none of this name
     */
    public static ImageDescriptor descriptor(String name) {
        return find(FrameworkUtil.getBundle(Icons.class), name);
    }

    /**
     * The sign of a severity; each has a shape of its own.
     *
     * @param severity any severity
     * @return its icon
     */
    public static ImageDescriptor severity(Severity severity) {
        return find(FrameworkUtil.getBundle(Severity.class),
                severity.name().toLowerCase(Locale.ROOT));
    }

    private static ImageDescriptor find(Bundle bundle, String name) {
        URL url = FileLocator.find(bundle, new Path("icons/" + name + ".svg"), null);
        return url == null ? null : ImageDescriptor.createFromURL(url);
    }
}
