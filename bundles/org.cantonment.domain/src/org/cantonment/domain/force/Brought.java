package org.cantonment.domain.force;

import org.cantonment.domain.common.Id;

/** An item that the player brings to the table. */
public record Brought(Id id, int count, Id item) {
}
