package org.cantonment.desk.cli;

/** Which version this is. */
public final class Version {
    /** The number, as the bundle bears it. */
    public static final String TEXT = "0.1.0";

    private Version() {
    }
}
