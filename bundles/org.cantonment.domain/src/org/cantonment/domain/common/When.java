package org.cantonment.domain.common;

/** One condition of time. */
public sealed interface When permits Reach, InRounds, InEras {

    /** Whether it holds then; what asks for something the occasion leaves open does not hold. */
    default boolean covers(Occasion occasion, EraOrder eras) {
        if (this instanceof Reach reach) {
            return reach.from().map(moment -> occasion.reaches(moment, eras)).orElse(true)
                    && reach.to().map(moment -> occasion.notBeyond(moment, eras)).orElse(true);
        }
        if (this instanceof InRounds rounds) {
            return occasion.round().isPresent() && occasion.round().getAsInt() >= rounds.first()
                    && occasion.round().getAsInt() <= rounds.last();
        }
        return occasion.era().isPresent() && ((InEras) this).eras().contains(occasion.era().get());
    }
}
