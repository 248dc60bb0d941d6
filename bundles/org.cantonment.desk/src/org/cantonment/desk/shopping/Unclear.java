package org.cantonment.desk.shopping;

/** A question about buying cannot be asked like this; the message is a whole sentence for a person. */
public final class Unclear extends Exception {
    private static final long serialVersionUID = 1L;

    Unclear(String message) {
        super(message);
    }
}
