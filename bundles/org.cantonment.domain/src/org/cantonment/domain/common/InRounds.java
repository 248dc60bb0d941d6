package org.cantonment.domain.common;

/** In the rounds first to last, both included. */
public record InRounds(int first, int last) implements When {
}
