package org.cantonment.domain.finding;

/** Only words: nothing can be done by itself. */
public record Advice() implements Action {
}
