package org.cantonment.domain.campaign;

/** What somebody did. */
public sealed interface Doing permits
        Game, Meeting, Forfeit, Plain, TakesRole, HandedIn, Claim, Moved, Passed, GaveUp, Converted, Funded,
        Scored, Rolled, Honoured, CountTaken {
}
