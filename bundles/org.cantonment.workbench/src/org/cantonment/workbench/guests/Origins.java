package org.cantonment.workbench.guests;

import org.cantonment.rules.guest.Origin;
import org.osgi.framework.Bundle;

/** Where a plug-in comes from. */
final class Origins {

    private Origins() {
    }

    static Origin installed(Bundle bundle) {
        return Origin.installed(String.valueOf(bundle.getSymbolicName()), bundle.getVersion().toString(),
                bundle.getLastModified());
    }
}
