package org.cantonment.domain.common;

/** The week of this number, counted from 1. */
public record OfWeek(int number) implements Moment {
}
