package org.cantonment.buying.worth;

import java.util.List;
import java.util.Optional;

import org.cantonment.buying.plan.Plan;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.joda.money.Money;

/**
 * What a box is worth; three figures that are never mixed.
 *
 * @param price what one of it costs, postage and discount reckoned in; empty if it cannot be had
 * @param bare the same without them
 * @param singles the cheapest single boxes that yield at least the same pieces, and what that leaves over; empty if no
 *         single boxes do
 * @param saving what the box saves against them; below nothing if it is dearer
 * @param extras what in it is no piece, with a value where there is one
 * @param savingWithExtras the saving if the extras that have a value are wanted, too; the same where there are none
 * @param player what it saves a player; empty if none was asked about or nothing can be said
 * @param findings what stands in the way of a figure
 */
public record Worth(Id box, String title, Optional<Money> price, Optional<Money> bare, Optional<Plan> singles, Optional<Money> saving,
        List<ExtraWorth> extras, Optional<Money> savingWithExtras, Optional<ToPlayer> player, List<Finding> findings) {

    public Worth {
        extras = List.copyOf(extras);
        findings = List.copyOf(findings);
    }

    /**
     * An extra in the box.
     *
     * @param value what so many cost singly, else what the range says they are worth; empty if nobody says
     * @param sold whether the value is a price
     */
    public record ExtraWorth(Id extra, int count, Optional<Money> value, boolean sold) {
    }

    /**
     * What it saves a player.
     *
     * @param without the cheapest way to what he wants without the box; empty if there is none
     * @param with the cheapest way with the box on offer
     * @param saving the one less the other; empty if there is no way without
     * @param made the cheapest way if he is made to buy it; empty if there is none
     * @param dearer by how much that is dearer than the cheapest way with the box on offer
     */
    public record ToPlayer(Optional<Plan> without, Plan with, Optional<Money> saving, Optional<Plan> made,
            Optional<Money> dearer) {
    }
}
