package org.cantonment.stock.session;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.cantonment.domain.common.Id;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Turnout;

/**
 * Whether everybody can play, and who lends what to whom.
 *
 * @param turnouts who stands where, for each player, with what is lent reckoned in
 * @param supplies what each player has then
 * @param loans who lends what to whom: the fewest lenders, then the fewest pieces, then the truest
 * @param gaps why pieces are short; what they lack together is what is lacking if that is proven
 * @param bound no way to lend fills more places
 * @param fewest whether no fewer lenders would do, proven
 */
public record Evening(Map<Id, Turnout> turnouts, Map<Id, Supply> supplies, List<Lent> loans, List<Gap> gaps, int bound,
        boolean fewest) {

    public Evening {
        turnouts = Collections.unmodifiableMap(new TreeMap<>(turnouts));
        supplies = Collections.unmodifiableMap(new TreeMap<>(supplies));
        loans = List.copyOf(loans);
        gaps = List.copyOf(gaps);
    }

    /** How many places are filled. */
    public int filled() {
        return turnouts.values().stream().mapToInt(Turnout::filled).sum();
    }

    /** How many pieces are short. */
    public int lacking() {
        return turnouts.values().stream().mapToInt(Turnout::lacking).sum();
    }

    /** Whether no way to lend leaves less short. */
    public boolean proven() {
        return bound <= filled();
    }

    /** Who lends, each once. */
    public List<Id> lenders() {
        return loans.stream().map(Lent::from).distinct().sorted().toList();
    }

    /** The turnout of a player. */
    public Optional<Turnout> turnout(Id player) {
        return Optional.ofNullable(turnouts.get(player));
    }
}
