package org.cantonment.domain.rules;

/** These pieces go, those come. */
public record Swap(Need out, Need in) {
}
