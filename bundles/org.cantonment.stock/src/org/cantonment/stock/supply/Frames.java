package org.cantonment.stock.supply;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Fixing;

/**
 * So many alike parts, each of which becomes one of several handfuls.
 *
 * @param part the part
 * @param count how many, at least 1
 * @param guessed whether their number is a guess
 * @param ways how each may be built
 * @param built the number of the way in which they are built now and can be rebuilt from; -1 if unbuilt
 * @param fixing how a build is held together
 */
public record Frames(Id part, int count, boolean guessed, List<Way> ways, int built, Fixing fixing) {

    public Frames {
        ways = List.copyOf(ways);
        if (count < 1 || built >= ways.size()) {
            throw new IllegalArgumentException(count + " of " + part + " built in way " + built);
        }
    }
}
