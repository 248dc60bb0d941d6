package org.cantonment.rules.check;

/** One family of rules. */
@FunctionalInterface
public interface Check {

    /** Says to the sink what is wrong with the case. The case is only read. */
    void check(Case about, Sink sink);
}
