package org.cantonment.desk.shopping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.judging.Stores;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.supply.Supply;

/**
 * Somebody who wants to buy: what he has and what is to be fielded with it.
 *
 * @param player  who
 * @param title   what people call him
 * @param shelf   what he has now, loans reckoned in
 * @param aims    what is to be fielded, in order of priority
 * @param remarks whole sentences: what was taken into account, what stands in the way of a sure answer
 * @param others  who orders together with him: boxes and postage are shared, shelves are not
 */
public record Shopper(Id player, String title, Supply shelf, List<Aim> aims, List<String> remarks, List<Shopper> others) {
    /** So many remarks of a kind are told. */
    static final int MOST_REMARKS = 5;

    public Shopper {
        aims = List.copyOf(aims);
        remarks = List.copyOf(remarks);
        others = List.copyOf(others);
    }

    /** Alone. */
    Shopper(Id player, String title, Supply shelf, List<Aim> aims, List<String> remarks) {
        this(player, title, shelf, aims, remarks, List.of());
    }

    /** Together with others; each asks for what stands in his own lists. */
    public Shopper with(List<Shopper> more, Meanings meanings) {
        List<String> all = new ArrayList<>(remarks);
        more.forEach(one -> all.addAll(one.remarks()));
        List<Shopper> people = new ArrayList<>(List.of(this));
        people.addAll(more);
        for (Shelf shelf : meanings.shelves()) {
            List<String> sharing = people.stream().filter(one -> shelf.owners().contains(one.player())).map(Shopper::title).toList();
            if (sharing.size() > 1) {
                all.add("What lies on the shelf that " + PlanText.and(sharing) + " share counts for each of them; where both need"
                        + " it at once, it is too little.");
            }
        }
        return new Shopper(player, title, shelf, aims, all.stream().distinct().toList(), more);
    }

    /** All who order, in the order of the places in the question. */
    public List<Shopper> people() {
        List<Shopper> people = new ArrayList<>(List.of(this));
        people.addAll(others);
        return people;
    }

    /** What all of them want to field. */
    public List<Aim> wanted() {
        return people().stream().flatMap(one -> one.aims().stream()).toList();
    }

    /**
     * A player with the lists that an errand names.
     *
     * @param files the name of a list's file; empty if it has none
     * @throws Unclear if a list is not there or under no rules, or there is none
     */
    public static Shopper of(Meanings meanings, Player player, Errand errand, Shops shops,
            Function<ForceList, String> files) throws Unclear {
        Aims aims = new Aims(meanings, player, shops.market().catalogue());
        List<Aim> all = aims.of(errand.lists(), errand.also(), files, shops.day());
        return of(meanings, player, shops, all, aims.remarks());
    }

    static Shopper of(Meanings meanings, Player player, Shops shops, List<Aim> aims, List<String> remarks) {
        String title = ListTitle.player(player.id(), meanings);
        Supply shelf = shelf(meanings, player, shops);
        List<String> all = new ArrayList<>(remarks);
        List<Shelf> own = meanings.shelves().stream().filter(one -> one.owners().contains(player.id())).toList();
        if (own.isEmpty()) {
            all.add(title + " has no shelf here, so nothing is taken to be there.");
        }
        Supply.of(shops.market().catalogue(), own).findings().stream().map(Finding::message).distinct().limit(MOST_REMARKS)
                .forEach(all::add);
        return new Shopper(player.id(), title, shelf, aims, all);
    }

    /** What a player has now, loans reckoned in. */
    static Supply shelf(Meanings meanings, Player player, Shops shops) {
        return Stores.of(meanings, shops.market().catalogue(), meanings.campaignOf(player.id())).at(AsOf.NOW).of(player.id());
    }

    /** All that is to be fielded, in words: "Nib, rounds 1 and 2". */
    public String wants() {
        return people().stream().map(Shopper::own).collect(Collectors.joining("; "));
    }

    private String own() {
        List<String> rounds = aims.stream().map(Aim::list).flatMap(Optional::stream).filter(list -> list.player().isPresent()
                && list.round().isPresent()).map(list -> String.valueOf(list.round().getAsInt())).toList();
        List<String> words = new ArrayList<>();
        if (rounds.size() > 1) {
            words.add(title + ", rounds " + PlanText.and(rounds));
        }
        aims.stream().filter(aim -> rounds.size() < 2 || aim.list().filter(list -> list.round().isPresent()).isEmpty())
                .forEach(aim -> words.add(aim.title()));
        return words.size() < 2 ? PlanText.and(words) : String.join("; ", words);
    }

    /** What is to be fielded. */
    public List<Target> targets() {
        List<Target> targets = new ArrayList<>();
        List<Shopper> people = people();
        for (int person = 0; person < people.size(); person++) {
            for (Aim aim : people.get(person).aims()) {
                targets.add(aim.target().of(person));
            }
        }
        return targets;
    }

    /** All of it at once, no end of money. */
    public Question question(Shops shops) {
        return others.isEmpty() ? Question.of(shops.market(), shelf, targets())
                : Question.together(shops.market(), people().stream().map(Shopper::shelf).toList(), targets());
    }
}
