package org.cantonment.domain.campaign;

import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/** A named unit earned experience or an honour. */
public record Honoured(Id veteran, OptionalInt experience, Optional<String> honour) implements Doing {
}
