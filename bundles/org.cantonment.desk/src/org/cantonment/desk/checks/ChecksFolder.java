package org.cantonment.desk.checks;

import java.nio.file.Path;

/**
 * The folder whose jars are taken in as plug-ins with checks. It is the user's own and lies outside all campaigns, so that
 * opening somebody's campaign never runs anybody's code.
 */
public final class ChecksFolder {
    /** The name of the setting, of the environment and as a property of Java's, that names another folder. */
    public static final String ENVIRONMENT = "CANTONMENT_CHECKS";
    /** The property. */
    public static final String PROPERTY = "cantonment.checks";

    private ChecksFolder() {
    }

    /** The folder, absolute; it need not exist. */
    public static Path path() {
        String named = System.getProperty(PROPERTY, System.getenv(ENVIRONMENT));
        Path folder = named == null || named.isBlank()
                ? Path.of(System.getProperty("user.home"), "cantonment", "checks") : Path.of(named);
        return folder.toAbsolutePath().normalize();
    }
}
