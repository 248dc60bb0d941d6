package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;

/** Is paired with the other. */
public record Meeting(Id other) implements Doing {
}
