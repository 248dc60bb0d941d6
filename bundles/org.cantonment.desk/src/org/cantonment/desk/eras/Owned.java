package org.cantonment.desk.eras;

import java.util.List;

import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Shelf;

/**
 * What somebody owns, to field lists with.
 *
 * @param who     whose it is: "Ombra", or "the club"; empty if nobody's is known
 * @param why     if nobody's is known, why, as a whole sentence; else empty
 * @param shelves where it lies
 */
public record Owned(String who, String why, List<Shelf> shelves) {

    public Owned {
        shelves = List.copyOf(shelves);
    }

    /** What a list's player owns: all shelves that are his, shared ones included. */
    public static Owned of(Meanings meanings, ForceList list) {
        if (list.player().isEmpty()) {
            return unknown("This list has no player, so nothing is known of what is owned.");
        }
        Id player = list.player().get();
        List<Shelf> shelves = meanings.shelves().stream().filter(shelf -> shelf.owners().contains(player)).toList();
        String who = ListTitle.player(player, meanings);
        return shelves.isEmpty() ? unknown(who + " has no shelf here, so nothing is known of what is owned.")
                : new Owned(who, "", shelves);
    }

    /** What lies on one shelf. */
    public static Owned of(Meanings meanings, Shelf shelf) {
        String who = shelf.club() ? "the club" : String.join(" and ", shelf.owners().stream()
                .map(owner -> ListTitle.player(owner, meanings)).toList());
        return new Owned(who.isEmpty() ? "nobody" : who, "", List.of(shelf));
    }

    /** Nothing is known of what is owned. */
    public static Owned unknown(String why) {
        return new Owned("", why, List.of());
    }

    /** Whether anything is known. */
    public boolean known() {
        return why.isEmpty();
    }
}
