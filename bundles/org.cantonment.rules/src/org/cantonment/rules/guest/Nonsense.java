package org.cantonment.rules.guest;

/** A check handed back something that is no answer. */
final class Nonsense extends Exception {

    private static final long serialVersionUID = 1L;

    Nonsense(String how) {
        super(how);
    }
}
