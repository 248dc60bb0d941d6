package org.cantonment.domain.rules;

/**
 * Whether what is taken needs others beside it, shuts them out, must be attached to one of them, or must be as
 * strong as one of them.
 */
public enum Relation {
    NEEDS, EXCLUDES, JOINS, MATCHES
}
