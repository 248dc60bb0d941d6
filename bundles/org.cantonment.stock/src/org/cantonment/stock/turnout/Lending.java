package org.cantonment.stock.turnout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;

/**
 * Whose is what where several people's things are asked for at once. There each type bears its owner in its id.
 *
 * @param players by entry, who needs it
 * @param owned by plain type, the types that bear an owner, by owner
 * @param lenders who lends
 */
record Lending(Map<Id, Id> players, Map<Id, Map<Id, Id>> owned, Set<Id> lenders) {

    /** Everything belongs to whoever asks. */
    static final Lending NONE = new Lending(Map.of(), Map.of(), Set.of());

    /** A type as it may be had. */
    record Had(Id type, boolean lent) {
    }

    Optional<Id> player(Id entry) {
        return Optional.ofNullable(players.get(entry));
    }

    /** The ways to have a type, for a player; the type itself where nobody owns anything. */
    List<Had> had(Id type, Optional<Id> player) {
        if (player.isEmpty()) {
            return List.of(new Had(type, false));
        }
        return owned.getOrDefault(type, Map.of()).entrySet().stream()
                .filter(one -> one.getKey().equals(player.get()) || lenders.contains(one.getKey()))
                .map(one -> new Had(one.getValue(), !one.getKey().equals(player.get()))).toList();
    }
}
