package org.cantonment.desk.eras;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.cantonment.desk.judging.Cases;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.rules.view.Ruling;
import org.cantonment.stock.eras.EraUnits;
import org.cantonment.stock.eras.ShelfEras;

/**
 * What a shelf is good for in every era.
 *
 * @param owner  whose it is
 * @param rules  by which book of rules, in words
 * @param titles what people call the eras and units
 * @param eras   the answer
 */
public record ShelfAnswer(String owner, String rules, Map<Id, String> titles, ShelfEras eras) {
    public ShelfAnswer {
        titles = Collections.unmodifiableMap(new TreeMap<>(titles));
    }

    /** What people call an era or a unit. */
    public String title(Id id) {
        return titles.getOrDefault(id, id.name());
    }

    /**
     * Asks. The rules are those that the owner's campaign plays; without one, those of the only campaign there is, else the
     * only book there is that stands over no other. They are asked as they stand in no round in particular.
     *
     * @param meanings what all books mean
     * @param shelf    one of their shelves
     * @param cancel   asked often
     * @param progress told of each era
     * @throws ListEras.Unclear if nobody says which rules are meant, or they know no eras
     * @throws Cancelled        if the token says so
     */
    public static ShelfAnswer of(Meanings meanings, Shelf shelf, CancelToken cancel, Progress progress)
            throws ListEras.Unclear {
        Optional<Campaign> campaign = shelf.owners().stream().map(meanings::campaignOf).flatMap(Optional::stream)
                .findFirst().or(() -> meanings.campaigns().size() == 1 ? Optional.of(meanings.campaigns().get(0))
                        : Optional.empty());
        List<RuleSet> books = books(meanings, campaign);
        List<Era> eras = books.stream().flatMap(book -> book.eras().stream()).toList();
        if (eras.isEmpty()) {
            throw new ListEras.Unclear(books.isEmpty() ? "Nobody says by which rules this shelf is to be looked at: write"
                    + " 'plays' and the book in its player's campaign." : "The rules here know no eras.");
        }
        Cupboard cupboard = new Cupboard(meanings, List.of(shelf), books, campaign);
        Cases cases = Cases.of(meanings);
        Map<Id, String> titles = new TreeMap<>();
        List<EraUnits> units = new ArrayList<>();
        for (Era era : eras) {
            Ruling ruling = cases.ruling(books, Occasion.in(era.id()));
            titles.put(era.id(), era.title());
            ruling.units().forEach(unit -> titles.putIfAbsent(unit.id(), unit.title()));
            units.add(new EraUnits(era.id(), cupboard.allowance(ruling), Units.of(ruling)));
        }
        String rules = books.stream().map(RuleSet::title).collect(Collectors.joining(", "));
        return new ShelfAnswer(Owned.of(meanings, shelf).who(), rules, titles, ShelfEras.of(cupboard.catalogue(),
                cupboard.supply(), units, side(shelf, campaign), cancel, progress));
    }

    private static List<RuleSet> books(Meanings meanings, Optional<Campaign> campaign) {
        List<RuleSet> played = meanings.closure(campaign.map(Campaign::plays).orElse(List.of()));
        List<RuleSet> bases = meanings.ruleSets().stream().filter(book -> book.over().isEmpty()).toList();
        return !played.isEmpty() ? played : bases.size() == 1 ? bases : List.of();
    }

    private static Optional<Id> side(Shelf shelf, Optional<Campaign> campaign) {
        List<Id> sides = campaign.stream().flatMap(one -> one.players().stream())
                .filter(player -> shelf.owners().contains(player.id())).map(Player::side).flatMap(Optional::stream)
                .distinct().toList();
        return sides.size() == 1 ? Optional.of(sides.get(0)) : Optional.empty();
    }
}
