package org.cantonment.domain.common;

/** Something with an id and a label for people's eyes. */
public interface Titled {

    /** Its stable id. */
    Id id();

    /** What people see; empty if nothing was written. */
    String label();

    /** The label, or the name if there is none. */
    default String title() {
        return label().isEmpty() ? id().name() : label();
    }
}
