package org.cantonment.desk.turnout;

/**
 * A piece type of which the roll lacks some.
 *
 * @param title    what people call it
 * @param enrolled the most that a list of the season wanted of it, up to this one
 * @param lost     lost and not rebuilt
 * @param wounded  not back yet
 * @param wanted   how many this list wants
 * @param rebuild  how many to rebuild, the cheapest first, as far as the funds go
 */
public record RollRow(String title, int enrolled, int lost, int wounded, int wanted, int rebuild) {

    /** How many are left. */
    public int left() {
        return Math.max(0, enrolled - lost - wounded);
    }

    /** How many the list may not field, if nothing is rebuilt. */
    public int lacking() {
        return Math.max(0, wanted - left());
    }
}
