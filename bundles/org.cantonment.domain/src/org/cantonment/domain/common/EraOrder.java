package org.cantonment.domain.common;

/** Which era comes after which. */
@FunctionalInterface
public interface EraOrder {

    /** No era comes after another. */
    EraOrder NONE = Id::equals;

    /** Whether the era is the earlier one itself or comes after it. */
    boolean follows(Id era, Id earlier);
}
