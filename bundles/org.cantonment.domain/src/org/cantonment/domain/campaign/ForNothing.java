package org.cantonment.domain.campaign;

/** For nothing at all, and that was meant. */
public record ForNothing() implements Exchange {
}
