package org.cantonment.domain.range;

import org.cantonment.domain.common.Id;

/**
 * So many of a piece, part, extra, bits or box; an unknown count is written with the certainty UNKNOWN and stands
 * for at most count.
 */
public record Content(Certainty certainty, int count, Id what) {
}
