package org.cantonment.workbench.guests;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.cli.Main;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The command line run in the product, where checks of others are at hand. No window, no workspace. */
public final class TerminalApplication implements IApplication {

    /** Stands before each word of the call, so that the launcher takes none for its own. */
    private static final String MARK = "=";

    @Override
    public Object start(IApplicationContext context) {
        context.applicationRunning();
        GuestHouse house = GuestHouse.instance();
        house.open();
        house.settle();
        try {
            return Main.run(words((String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS)),
                    Optional.of(house.guests()));
        } finally {
            house.close();
        }
    }

    static String[] words(String[] arguments) {
        List<String> words = new ArrayList<>();
        for (String argument : arguments) {
            if (argument.startsWith(MARK)) {
                words.add(argument.substring(MARK.length()));
            }
        }
        return words.toArray(String[]::new);
    }

    @Override
    public void stop() {
        GuestHouse.instance().close();
    }
}
