package org.cantonment.domain.common;

/** Lets whoever asked for an answer say that it is no longer wanted. */
@FunctionalInterface
public interface CancelToken {

    /** Is never cancelled. */
    CancelToken NEVER = () -> false;

    /** Whether the answer is no longer wanted; cheap, and may be asked from any thread. */
    boolean cancelled();

    /** @throws Cancelled if the answer is no longer wanted */
    default void check() {
        if (cancelled()) {
            throw new Cancelled();
        }
    }
}
