package org.cantonment.domain.shelf;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/** Where something came from: something the books know, else a text. */
public record Source(Optional<Id> id, String text) {
}
