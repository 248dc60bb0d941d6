package org.cantonment.workbench.guests;

import java.util.List;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.notifications.NotificationPopup;
import org.eclipse.swt.widgets.Display;

/** Shows news of checks in a corner of the screen; it takes no focus and goes by itself. All of it stands in the settings, too. */
public final class NewsPopup {

    private static final String PLUGIN = "org.cantonment.workbench";

    private NewsPopup() {
    }

    /** From now on tells what comes, until the display is gone. @return to be run at the end */
    public static Runnable begin(Display display) {
        News news = new News(GuestHouse.instance().guests(), InstanceScope.INSTANCE.getNode(PLUGIN),
                sentences -> show(display, sentences));
        return GuestHouse.instance().guests().onChange(news::look);
    }

    private static void show(Display display, List<String> sentences) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> NotificationPopup.forDisplay(display).title("Checks of plug-ins", true)
                    .text(String.join("\n", sentences)).open());
        }
    }
}
