package org.cantonment.domain.common;

/** The era itself. */
public record OfEra(Id era) implements Moment {
}
