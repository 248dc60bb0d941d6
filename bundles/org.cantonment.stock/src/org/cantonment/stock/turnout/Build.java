package org.cantonment.stock.turnout;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;

/**
 * Frames that a turnout would have built.
 *
 * @param part the part
 * @param build the line of the range that says how
 * @param rebuilt whether they are built another way now
 * @param fixing whether they can be built anew later
 */
public record Build(Id part, Id build, int frames, boolean rebuilt, Fixing fixing) {
}
