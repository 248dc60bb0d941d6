package org.cantonment.domain.campaign;

import org.cantonment.domain.common.Id;

/** A deed that did not happen after all, or one that did. */
public record Struck(Id id, boolean not, Deed deed) {
}
