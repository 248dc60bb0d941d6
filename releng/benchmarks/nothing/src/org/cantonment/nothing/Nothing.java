package org.cantonment.nothing;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** Returns at once. */
public final class Nothing implements IApplication {
    @Override
    public Object start(IApplicationContext context) {
        return EXIT_OK;
    }

    @Override
    public void stop() {
        // there is nothing to stop
    }
}
