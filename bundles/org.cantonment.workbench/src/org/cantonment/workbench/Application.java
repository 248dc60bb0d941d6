package org.cantonment.workbench;

import java.util.Optional;

import org.apache.log4j.Level;
import org.apache.log4j.LogManager;
import org.cantonment.editor.api.LanguageHost;
import org.cantonment.editor.model.DocumentModels;
import org.cantonment.workbench.guests.GuestHouse;
import org.cantonment.workbench.guests.NewsPopup;
import org.cantonment.workbench.notation.DeskLink;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.osgi.framework.FrameworkUtil;

/** The workbench as an application: opens the window and waits until it is closed. */
public final class Application implements IApplication {

    /** The argument before the campaign folder that is to be opened. */
    public static final String CAMPAIGN = "-campaign";

    private static final Integer NO_SCREEN = 1;

    @Override
    public Object start(IApplicationContext context) {
        if (System.getenv("DBUS_SESSION_BUS_ADDRESS") == null) {
            // without a session bus SWT would complain on the terminal that it cannot be told of a log-out
            System.setProperty("org.eclipse.swt.internal.SessionManagerDBus.disable", "true");
        }
        // the parser's own log has nothing for people, and no place to write to
        LogManager.getLoggerRepository().setThreshold(Level.OFF);
        Display display;
        try {
            display = PlatformUI.createDisplay();
        } catch (SWTError noScreen) {
            System.err.println("cantonment: no window can be opened here; is there a screen? (" + noScreen.getMessage()
                    + ")");
            return NO_SCREEN;
        }
        try {
            FrameworkUtil.getBundle(Application.class).getBundleContext().registerService(LanguageHost.class,
                    DeskLink.instance().host(), null);
            NewsPopup.begin(display);
            GuestHouse.instance().open();
            GuestHouse.instance().watch();
            DocumentModels.all(); // from now on every opened book has its model
            String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
            int end = PlatformUI.createAndRunWorkbench(display, new Advisor(campaign(arguments)));
            return end == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            GuestHouse.instance().close();
            display.dispose();
        }
    }

    static Optional<String> campaign(String[] arguments) {
        for (int i = 0; arguments != null && i + 1 < arguments.length; i++) {
            if (CAMPAIGN.equals(arguments[i])) {
                return Optional.of(arguments[i + 1]);
            }
        }
        return Optional.empty();
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            Display display = PlatformUI.getWorkbench().getDisplay();
            display.syncExec(() -> PlatformUI.getWorkbench().close());
        }
    }
}
