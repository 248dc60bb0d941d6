package org.cantonment.rules.expression;

/** Nothing, and why. */
public enum Gap implements Value {

    /** A list of a player's first round has none before it: what asks for it is silent. */
    NO_LIST_BEFORE(true, "there is no list before"),
    NO_SHELF(true, "the player's shelf is not known"),
    NO_ROUND(true, "the round is not known"),
    NO_ERA(true, "the era is not known"),
    NO_LIMIT(true, "no limit of points is known"),
    NOBODY(true, "there is nobody to take the greatest or the least of"),
    BY_NOTHING(false, "something is divided by 0"),
    BEYOND(false, "a number is beyond all measure"),
    TOO_LONG(false, "it would take too many steps");

    private final boolean unknown;
    private final String words;

    Gap(boolean unknown, String words) {
        this.unknown = unknown;
        this.words = words;
    }

    /** Whether somebody might come to know it; else the rule itself is at fault. */
    public boolean unknown() {
        return unknown;
    }

    @Override
    public String words() {
        return words;
    }
}
