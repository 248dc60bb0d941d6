package org.cantonment.domain.campaign;

/** Handed in a list. */
public record HandedIn() implements Doing {
}
