package org.cantonment.rules.api;

import java.util.List;

/**
 * What everything that others bring says of itself, whatever it does. Nobody implements this alone: {@link RuleCheck}
 * is what a check implements, and further doors will stand beside it in the same way.
 *
 * <p>All of these are asked once, when the plug-in arrives, and must always answer the same.
 */
public interface Guest {

    /**
     * The name by which a campaign asks for it: one word that begins with a capital, parts joined by hyphens, at most 60
     * letters, never changed once it is published: {@code River-Crossing}. Of two plug-ins with one name neither knows
     * which is meant, so choose one that says whose it is if it may be taken.
     */
    String name();

    /** What people see instead of the name: {@code Crossing the river}. Not blank. */
    String label();

    /** What it does, in one sentence or two for an organiser. Not blank. */
    String about();

    /** The settings that it takes, in the order of its reference; empty if it takes none. Names differ. */
    List<Parameter> parameters();
}
