package org.cantonment.desk.turnout;

/** Something that no shelf holds and that must be on the table: how many are wanted, and how many the list brings. */
public record ItemRow(String title, String name, int wanted, int brought) {

    /** How many nobody brings. */
    public int missing() {
        return Math.max(0, wanted - brought);
    }
}
