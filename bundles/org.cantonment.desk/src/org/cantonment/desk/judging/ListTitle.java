package org.cantonment.desk.judging;

import org.cantonment.domain.campaign.NameOf;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;

/** What people call a list: whose it is and for which round, or its own name. */
public final class ListTitle {
    private ListTitle() {
    }

    /** "Brack, round 2", or "Dream". */
    public static String of(ForceList list, Meanings meanings) {
        String whose = list.player().map(player -> player(player, meanings)).orElse(list.id().name());
        return list.player().isPresent() && list.round().isPresent() ? whose + ", round " + list.round().getAsInt()
                : whose;
    }

    /** What people call a player: by a book of names, else by the label, else by the name in the text. */
    public static String player(Id id, Meanings meanings) {
        return meanings.names().stream().flatMap(book -> book.names().stream())
                .filter(name -> name.player().equals(id)).findFirst().map(NameOf::name)
                .or(() -> meanings.player(id).map(Player::title)).orElse(id.name());
    }
}
