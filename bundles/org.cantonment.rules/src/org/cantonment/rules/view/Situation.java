package org.cantonment.rules.view;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Excuse;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;

/**
 * What a list is judged in, beside the rules.
 *
 * @param points the limit of points, if there is one
 * @param pointsRule the line that sets it
 * @param player whose list it is
 * @param side the player's side; without one, sides are not asked
 * @param before the player's list of the round before
 * @param used how many of each unit or formation the player's earlier lists of the campaign had
 * @param excuses the campaign's dispensations
 * @param contingents the rules of each contingent that has books of its own, by the contingent's id
 * @param holdings what the player has at hand, if the shelf is known
 * @param kin the family of each piece type, and of each family the one it lies in
 */
public record Situation(OptionalInt points, Optional<Id> pointsRule, Optional<Id> player, Optional<Id> side,
        Optional<ForceList> before, Map<Id, Integer> used, List<Excuse> excuses, Map<Id, Ruling> contingents,
        CancelToken cancel, Optional<Holdings> holdings, Map<Id, Id> kin) {

    /** Nothing is known beside the rules and the list. */
    public static final Situation BARE = new Situation(OptionalInt.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), Map.of(), List.of(), Map.of(), CancelToken.NEVER,
            Optional.empty(), Map.of());

    public Situation {
        used = Map.copyOf(used);
        excuses = List.copyOf(excuses);
        contingents = Map.copyOf(contingents);
        kin = Map.copyOf(kin);
    }

    /** Whether a choice is permitted now and stands on the player's side. */
    public boolean mayTake(Choice choice) {
        return choice.permission().allowed() && (side.isEmpty() || choice.sides().isEmpty()
                || choice.sides().contains(side.get()));
    }

    /** The same with a limit of points, and the line that sets it. */
    public Situation withPoints(int limit, Optional<Id> rule) {
        return new Situation(OptionalInt.of(limit), rule, player, side, before, used, excuses, contingents, cancel,
                holdings, kin);
    }

    /** The same for a player of a side. */
    public Situation withPlayer(Id who, Optional<Id> whose) {
        return new Situation(points, pointsRule, Optional.of(who), whose, before, used, excuses, contingents, cancel,
                holdings, kin);
    }

    /** The same after another list. */
    public Situation withBefore(ForceList list) {
        return new Situation(points, pointsRule, player, side, Optional.of(list), used, excuses, contingents, cancel,
                holdings, kin);
    }

    /** The same after a campaign that used so many of these. */
    public Situation withUsed(Map<Id, Integer> counts) {
        return new Situation(points, pointsRule, player, side, before, counts, excuses, contingents, cancel,
                holdings, kin);
    }

    /** The same with these dispensations. */
    public Situation withExcuses(List<Excuse> others) {
        return new Situation(points, pointsRule, player, side, before, used, others, contingents, cancel,
                holdings, kin);
    }

    /** The same with rules for contingents. */
    public Situation withContingents(Map<Id, Ruling> rulings) {
        return new Situation(points, pointsRule, player, side, before, used, excuses, rulings, cancel,
                holdings, kin);
    }

    /** The same, cancelled by another token. */
    public Situation withCancel(CancelToken token) {
        return new Situation(points, pointsRule, player, side, before, used, excuses, contingents, token,
                holdings, kin);
    }

    /**
     * The same with what the player has at hand.
     *
     * @param families the family of each piece type, and of each family the one it lies in
     */
    public Situation withHoldings(Optional<Holdings> pieces, Map<Id, Id> families) {
        return new Situation(points, pointsRule, player, side, before, used, excuses, contingents, cancel, pieces,
                families);
    }
}
