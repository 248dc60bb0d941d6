package org.cantonment.desk.cli;

import org.apache.log4j.Level;
import org.apache.log4j.Logger;

/** Keeps libraries from writing beside the answer, and from looking for files that say what they should write. */
final class Quiet {
    private Quiet() {
    }

    static void libraries() {
        System.setProperty("log4j.defaultInitOverride", "true");
        Logger.getRootLogger().setLevel(Level.OFF);
    }
}
