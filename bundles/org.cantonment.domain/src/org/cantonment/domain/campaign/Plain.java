package org.cantonment.domain.campaign;

/** Rested, joined or withdrew. */
public record Plain(PlainVerb verb) implements Doing {
}
