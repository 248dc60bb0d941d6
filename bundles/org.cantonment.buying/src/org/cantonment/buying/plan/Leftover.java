package org.cantonment.buying.plan;

import org.cantonment.domain.common.Id;

/**
 * So many that were bought and stand in no target.
 *
 * @param what a piece type; a part that is left unbuilt; or an extra that nobody asked for
 */
public record Leftover(Id what, int count) {
}
