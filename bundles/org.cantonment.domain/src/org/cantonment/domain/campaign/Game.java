package org.cantonment.domain.campaign;

import java.util.Optional;

import org.cantonment.domain.common.Id;

/** Beat or drew the other, with the score if it is known. */
public record Game(boolean drawn, Id other, Optional<Result> result) implements Doing {
}
