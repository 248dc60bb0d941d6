package org.cantonment.rules.guest;

import java.util.List;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/**
 * A list that checks of others are asked about, and all that is known around it.
 *
 * @param books the rule sets it is under, lower ones first
 * @param ruling the same as they stand at the list's time
 * @param situation what it was judged in
 * @param verdict what the judge said
 * @param earlier the player's lists for earlier rounds, earlier ones first
 * @param shelves those that the player owns or shares
 */
public record Circumstances(Campaign campaign, ForceList list, List<RuleSet> books, Ruling ruling,
        Situation situation, Verdict verdict, List<ForceList> earlier, List<Shelf> shelves, CancelToken cancel) {

    public Circumstances {
        books = List.copyOf(books);
        earlier = List.copyOf(earlier);
        shelves = List.copyOf(shelves);
    }
}
