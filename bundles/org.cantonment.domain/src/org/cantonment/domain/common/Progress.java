package org.cantonment.domain.common;

/** Told by a long computation how far it is. */
@FunctionalInterface
public interface Progress {

    /** Tells nobody. */
    Progress SILENT = (done, of, doing) -> {
    };

    /**
     * Called from the computing thread, at most a few times a second.
     *
     * @param done steps done, from 0
     * @param of all steps, or 0 while that is not known
     * @param doing what is being done, as a phrase for people
     */
    void at(long done, long of, String doing);
}
