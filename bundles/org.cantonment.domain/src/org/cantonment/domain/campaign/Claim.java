package org.cantonment.domain.campaign;

/** Says the score was this. */
public record Claim(Result result) implements Doing {
}
