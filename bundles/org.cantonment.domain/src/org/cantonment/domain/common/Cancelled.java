package org.cantonment.domain.common;

/** Ends a computation whose answer is no longer wanted. */
public final class Cancelled extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** A signal, no fault: it carries no stack. */
    public Cancelled() {
        super("No longer wanted", null, false, false);
    }
}
