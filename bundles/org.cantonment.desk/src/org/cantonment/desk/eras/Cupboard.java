package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.judging.Stores;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.view.Ruling;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Depot;

/** What lies on some shelves, and what may stand for what by the books of a list and the club's rule of likeness. */
public final class Cupboard {
    private final Catalogue catalogue;
    private final Supply supply;
    private final List<Likeness> cards = new ArrayList<>();
    private final Optional<Campaign> campaign;

    /**
     * What lies there now: the shelves as they were written down, and whatever the weeks did since.
     *
     * @param books    the rules that hold, lower ones first
     * @param campaign the campaign, whose cards of likeness hold beside those of the rules
     */
    Cupboard(Meanings meanings, Collection<Shelf> shelves, List<RuleSet> books, Optional<Campaign> campaign) {
        this.catalogue = Catalogue.of(meanings.ranges(), meanings.ruleSets());
        this.supply = Stores.of(meanings, catalogue, campaign).at(AsOf.NOW)
                .together(shelves.stream().map(Shelf::id).toList());
        this.campaign = campaign;
        addCards(books);
    }

    /** What is said to lie there. */
    public Cupboard(Catalogue catalogue, Supply supply, List<RuleSet> books, Optional<Campaign> campaign) {
        this.catalogue = catalogue;
        this.supply = supply;
        this.campaign = campaign;
        addCards(books);
    }

    private void addCards(List<RuleSet> books) {
        books.forEach(book -> cards.addAll(book.likenesses()));
        campaign.ifPresent(one -> cards.addAll(one.likenesses()));
    }

    /** What the books know. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** What is there. */
    public Supply supply() {
        return supply;
    }

    /** What may stand for what when a ruling holds; a round says more if the ruling is for one. */
    public Allowance allowance(Ruling ruling) {
        return allowance(ruling, Optional.empty());
    }

    /** The same, but nothing less true than this. */
    public Allowance allowance(Ruling ruling, Optional<Level> ceiling) {
        Optional<Round> round = campaign.flatMap(one -> one.rounds().stream()
                .filter(some -> ruling.occasion().round().isPresent()
                        && some.number() == ruling.occasion().round().getAsInt()).findFirst());
        return Allowance.of(catalogue, cards, round, new Terms(ruling.occasion(), ruling.eras(), ceiling, true));
    }

    /** What can be fielded when a ruling holds. */
    Fielding fielding(Ruling ruling, CancelToken cancel) {
        Depot depot = Depot.of(catalogue, supply, allowance(ruling));
        return needs -> depot.lacking(needs, cancel);
    }
}
