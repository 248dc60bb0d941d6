package org.cantonment.domain.common;

/** A point that something may hold from or until. */
public sealed interface Moment permits OnDate, OfRound, OfWeek, OfEra {
}
