package org.cantonment.domain.common;

/** The round of this number, counted from 1. */
public record OfRound(int number) implements Moment {
}
