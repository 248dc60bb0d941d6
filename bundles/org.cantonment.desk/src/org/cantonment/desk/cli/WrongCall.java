package org.cantonment.desk.cli;

/** The call is wrong or names what cannot be read; the message is a whole sentence for a person. */
final class WrongCall extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WrongCall(String message) {
        super(message, null, false, false);
    }
}
