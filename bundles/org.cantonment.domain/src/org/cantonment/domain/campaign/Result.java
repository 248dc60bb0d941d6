package org.cantonment.domain.campaign;

/** A score, the doer's own first. */
public record Result(int own, int theirs) {
}
