package org.cantonment.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/**
 * What a desk is to look at.
 *
 * @param place the folder whose books see each other, or a single file that no folder belongs to
 * @param asked the files whose findings are wanted; empty for all. Only their lists are judged
 * @param shelves whether shelves and weeks are read even if only lists are asked about
 */
public record DeskScope(Path place, Optional<Set<Path>> asked, boolean shelves) {
    public DeskScope {
        asked = asked.map(Set::copyOf);
    }

    /** A whole folder. */
    public static DeskScope all(Path folder) {
        return new DeskScope(folder, Optional.empty(), true);
    }

    /** Some files in the light of their folder. */
    public static DeskScope only(Path folder, Set<Path> files) {
        return new DeskScope(folder, Optional.of(files), false);
    }

    /** A whole folder without its lists: what lies where, and the rules. Nothing is judged. */
    public static DeskScope noLists(Path folder) {
        return new DeskScope(folder, Optional.of(Set.of()), true);
    }

    /** The same with all shelves read, to reckon with what players own. */
    public DeskScope withShelves() {
        return new DeskScope(place, asked, true);
    }

    /** Whether the findings of a file are wanted. */
    public boolean asks(Path file) {
        return asked.isEmpty() || asked.get().contains(file);
    }
}
