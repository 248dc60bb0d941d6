package org.cantonment.buying.formulate;

import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.shelf.BenchTime.Measure;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Way;

/**
 * How long parts take to build. What is kept or given away as it is takes no time. A part that can be rebuilt between games
 * takes as long as its longest way, once: all that is to be exchanged must be ready.
 */
public final class BuildTimes {

    private final Catalogue catalogue;
    private final Shares shares;

    /** @param shares how the things of several people are told apart */
    public BuildTimes(Catalogue catalogue, Shares shares) {
        this.catalogue = catalogue;
        this.shares = shares;
    }

    /** Whether anything is built: not where a part, or a piece that several share out, is kept as it is. */
    public boolean built(Id part, Id build) {
        return catalogue.part(part).isPresent() && !shares.plain(build).equals(part);
    }

    /** How long a part takes in a way, in minutes; empty if nobody says. */
    public OptionalInt minutes(Id part, Id build) {
        Id line = shares.plain(build);
        return catalogue.part(part).flatMap(one -> one.builds().stream().filter(way -> way.id().equals(line)).findFirst()
                .map(one::minutes)).orElse(OptionalInt.empty());
    }

    /** How long a part takes in the longest of its ways; empty if nobody says of any. */
    public OptionalInt longest(Id part) {
        return catalogue.part(part).map(BuildTimes::longest).orElse(OptionalInt.empty());
    }

    private static OptionalInt longest(Part part) {
        return part.builds().stream().map(part::minutes).flatMapToInt(OptionalInt::stream).max();
    }

    /** What a part built in a way counts; what does not say how long it takes counts nothing. */
    long weight(Measure measure, Id part, Id build) {
        return !built(part, build) ? 0 : measure == Measure.PARTS ? 1 : minutes(part, build).orElse(0);
    }

    /** The same of a part that is made ready for all its ways. */
    long weight(Measure measure, Id part) {
        return catalogue.part(part).isEmpty() ? 0 : measure == Measure.PARTS ? 1 : longest(part).orElse(0);
    }

    /** Whether a way takes no longer than another. */
    boolean asSoon(Id part, Way one, Way other) {
        return weight(Measure.MINUTES, part, one.build()) <= weight(Measure.MINUTES, part, other.build())
                && weight(Measure.PARTS, part, one.build()) <= weight(Measure.PARTS, part, other.build());
    }
}
