package org.cantonment.editor.text;

import org.cantonment.editor.api.LanguageHost;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;

/** The icons that one control shows; let go when the control goes. Screen's thread only. */
final class Icons {

    private final ResourceManager images;

    Icons(Control owner) {
        images = new LocalResourceManager(JFaceResources.getResources(), owner);
    }

    /** The icon of a name that the host knows, or null. */
    Image get(LanguageHost host, String name) {
        ImageDescriptor descriptor = name.isEmpty() ? null : host.icon(name);
        return descriptor == null ? null : images.get(descriptor);
    }
}
