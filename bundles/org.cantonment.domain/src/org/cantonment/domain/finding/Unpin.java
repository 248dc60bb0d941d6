package org.cantonment.domain.finding;

import org.cantonment.domain.common.Id;

/** Leave it open again in which billet of its formation the entry stands. */
public record Unpin(Id entry) implements Action {
}
