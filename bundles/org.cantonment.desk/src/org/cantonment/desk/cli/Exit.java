package org.cantonment.desk.cli;

/** What a call says to the shell at its end. */
final class Exit {
    /** Nothing breaks a rule. */
    static final int FINE = 0;
    /** Something does, or a file is not formatted. */
    static final int BREACH = 1;
    /** The call is wrong, or what it names cannot be read. */
    static final int WRONG = 2;

    private Exit() {
    }
}
