package org.cantonment.desk.adopting;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;

import org.cantonment.desk.LocatedFinding;

/**
 * What becomes of one list.
 *
 * @param file     the list
 * @param title    whose it is, or what it is called
 * @param before   how it stands now
 * @param after    how it would stand
 * @param broken   the breaches that are new, in the order of its lines
 * @param cleared  the breaches that are gone, in the order of its lines
 */
public record ListChange(Path file, String title, Standing before, Standing after, List<LocatedFinding> broken,
        List<LocatedFinding> cleared) {

    /**
     * How a list stands.
     *
     * @param legal  whether it has no breach
     * @param points its total; empty if that cannot be told
     */
    public record Standing(boolean legal, OptionalLong points) {
    }

    /** What matters most of a change. */
    public enum Kind {
        /** It was legal and is no longer. */
        NOW_BREACH,
        /** It was not legal and is now. */
        NO_LONGER_BREACH,
        /** It is as legal as it was, or as little, but breaches other rules than before. */
        OTHER_BREACHES,
        /** Its total is another. */
        TOTAL,
        /** Nothing changes. */
        NONE
    }

    public ListChange {
        broken = List.copyOf(broken);
        cleared = List.copyOf(cleared);
    }

    /** What matters most of it. */
    public Kind kind() {
        if (before.legal() != after.legal()) {
            return after.legal() ? Kind.NO_LONGER_BREACH : Kind.NOW_BREACH;
        }
        if (!broken.isEmpty() || !cleared.isEmpty()) {
            return Kind.OTHER_BREACHES;
        }
        return totalChanges() ? Kind.TOTAL : Kind.NONE;
    }

    /** Whether its total is another, whatever else changes. */
    public boolean totalChanges() {
        return !before.points().equals(after.points());
    }
}
