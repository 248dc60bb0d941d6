package org.cantonment.domain.force;

/** So many of an option, by its name. */
public record Taken(int count, String option) {
}
