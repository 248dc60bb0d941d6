package org.cantonment.desk.turnout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.cantonment.desk.eras.Cupboard;
import org.cantonment.desk.eras.Owned;
import org.cantonment.desk.judging.Cases;
import org.cantonment.desk.judging.ListCase;
import org.cantonment.desk.judging.ListTitle;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.desk.judging.Stores;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Level;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.view.Ruling;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.ledger.AsOf;
import org.cantonment.stock.ledger.Inventory;
import org.cantonment.stock.ledger.Ledger;
import org.cantonment.stock.ledger.Loan;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Build;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Gluing;
import org.cantonment.stock.turnout.Task;
import org.cantonment.stock.turnout.Together;
import org.cantonment.stock.turnout.Turnout;

/** Asks what can be fielded. Holds what it has worked out of one state of the books; for one thread. */
public final class Fielding {

    /** Nobody can say; the message is a whole sentence for a person. */
    public static final class Unclear extends Exception {
        private static final long serialVersionUID = 1L;

        Unclear(String message) {
            super(message);
        }
    }

    /**
     * What is asked beside the lists.
     *
     * @param week    as known after this week; empty for the day on which the list is played
     * @param ceiling nothing less true than this is wanted; empty for whatever the club allows
     */
    public record Terms(OptionalInt week, Optional<Level> ceiling) {
        /** What the club allows, when the list is played. */
        public static final Terms USUAL = new Terms(OptionalInt.empty(), Optional.empty());
    }

    /** Lists that share one choice of what is glued. */
    public record Shared(List<ListTurnout> lists, List<Build> builds, Together together) {
        public Shared {
            lists = List.copyOf(lists);
            builds = List.copyOf(builds);
        }
    }

    private static final int MOST_CLAIMS = 5;

    private Meanings meanings;
    private Cases cases;
    private final Catalogue catalogue;
    private final Map<Optional<Id>, Ledger> ledgers = new HashMap<>();
    private final Map<Optional<Id>, Map<AsOf, Inventory>> inventories = new HashMap<>();

    /** @param meanings what all books mean, shelves and weeks among them */
    public Fielding(Meanings meanings) {
        this.meanings = meanings;
        this.cases = Cases.of(meanings);
        this.catalogue = Catalogue.of(meanings.ranges(), meanings.ruleSets());
    }

    /** Other lists, everything else as it was. */
    void renew(Meanings now) {
        meanings = now;
        cases = Cases.of(now);
    }

    Catalogue catalogue() {
        return catalogue;
    }

    Meanings meanings() {
        return meanings;
    }

    Inventory inventory(Optional<Campaign> campaign, AsOf asOf) {
        Optional<Id> key = campaign.map(Campaign::id);
        return inventories.computeIfAbsent(key, id -> new HashMap<>()).computeIfAbsent(asOf, when ->
                ledgers.computeIfAbsent(key, id -> Stores.of(meanings, catalogue, campaign)).at(when));
    }

    /** The lists that a player's shelf is known for. */
    public boolean knows(ForceList list) {
        return Owned.of(meanings, list).known();
    }

    /**
     * Whether what its player has can field a list.
     *
     * @throws Unclear if the list is under no rules, or its player has no shelf
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public ListTurnout of(ForceList list, Terms terms, CancelToken cancel) throws Unclear {
        Optional<Campaign> campaign = list.player().flatMap(meanings::campaignOf);
        Asked asked = ask(list, terms, Stores.when(list, campaign, terms.week()));
        Turnout turnout = Depot.of(catalogue, asked.supply(), asked.answer().task().allowance())
                .turnout(asked.answer().task().needs(),
                        LastTime.of(this, list, asked.answer().task().needs(), terms, cancel), cancel);
        return asked.answer().with(turnout);
    }

    /**
     * Several lists of one player: one choice of what is glued serves all of them, each with the whole shelf.
     *
     * @throws Unclear if the lists are not all one player's, or one of them cannot be asked about
     */
    public Shared together(List<ForceList> lists, Terms terms, CancelToken cancel) throws Unclear {
        if (lists.stream().map(ForceList::player).distinct().count() > 1) {
            throw new Unclear("These lists are not all one player's, and nobody glues for another. Ask for each player apart,"
                    + " or for a whole evening with '--session'.");
        }
        AsOf asOf = terms.week().isPresent() ? AsOf.week(terms.week().getAsInt()) : AsOf.NOW;
        List<Asked> asked = new ArrayList<>();
        for (ForceList list : lists) {
            asked.add(ask(list, terms, asOf));
        }
        Supply supply = asked.get(0).own();
        Together together = Gluing.of(catalogue, supply, asked.stream().map(one -> one.answer().task()).toList(),
                Gluing.CHOICES, cancel);
        List<ListTurnout> answers = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            answers.add(asked.get(i).answer().with(together.turnouts().get(i), supply));
        }
        return new Shared(answers, together.builds(), together);
    }

    /** A list with all that is known of it but its turnout; what its player has, and that with what he borrows for it. */
    record Asked(ListTurnout answer, Supply own, Supply supply) {
    }

    Asked ask(ForceList list, Terms terms, AsOf asOf) throws Unclear {
        ListCase about = cases.of(list);
        if (about.ruling().isEmpty()) {
            throw new Unclear(about.unclear().get(about.unclear().size() - 1).message());
        }
        return ask(about, terms, asOf, true);
    }

    /** An earlier list as it was fielded; empty if it cannot be asked about. */
    Optional<Asked> earlier(ForceList list, Terms terms) {
        ListCase about = cases.of(list);
        try {
            return about.ruling().isEmpty() ? Optional.empty() : Optional.of(bare(about, terms));
        } catch (Unclear e) {
            return Optional.empty(); // it had no shelf then, so nobody stood there
        }
    }

    /** What its own shelf has for a list when it is played, the roll not asked. */
    Asked bare(ListCase about, Terms terms) throws Unclear {
        return ask(about, terms, Stores.when(about.list(), about.list().player().flatMap(meanings::campaignOf),
                terms.week()), false);
    }

    private Asked ask(ListCase about, Terms terms, AsOf asOf, boolean withRoll) throws Unclear {
        ForceList list = about.list();
        Owned owned = Owned.of(meanings, list);
        if (!owned.known()) {
            throw new Unclear(owned.why());
        }
        Inventory inventory = inventory(list.player().flatMap(meanings::campaignOf), asOf);
        Supply own = inventory.of(list.player().orElseThrow());
        List<String> remarks = new ArrayList<>(own.findings().stream().map(Finding::message).distinct().limit(MOST_CLAIMS)
                .toList());
        inventory.lentBy(list.player().get()).forEach(loan -> remarks.add(lent(loan)));
        Supply borrowed = new Borrowed(catalogue, meanings).of(list, inventory, remarks);
        return new Asked(told(about, terms, asOf, withRoll, own.plus(borrowed), remarks), own, own.plus(borrowed));
    }

    /** A list with all that is known of it when this is there for it, but no turnout. */
    private ListTurnout told(ListCase about, Terms terms, AsOf asOf, boolean withRoll, Supply supply, List<String> remarks) {
        ForceList list = about.list();
        Ruling ruling = about.ruling().get();
        Optional<Campaign> campaign = list.player().flatMap(meanings::campaignOf);
        List<Requirement> needs = Requirements.of(ruling, list, about.situation().contingents());
        Task task = new Task(list.id(), needs, new Cupboard(catalogue, supply, cases.booksOf(list), campaign)
                .allowance(ruling, terms.ceiling()));
        Map<Id, String> names = new LinkedHashMap<>(EntryNames.of(list, ruling, about.situation().contingents()));
        new Titles(catalogue, task, supply).addTo(names);
        Optional<RollRows> roll = campaign.filter(one -> withRoll && list.round().isPresent())
                .map(one -> RollRows.of(meanings, catalogue, one, about, asOf));
        return new ListTurnout(list, ListTitle.of(list, meanings), Owned.of(meanings, list).who(), asOf, task, supply, NONE,
                names, items(list, needs), roll, remarks, List.of());
    }

    private static final Turnout NONE = new Turnout(List.of(), 0, 0, 0, true, List.of(), List.of(), List.of(), List.of(),
            List.of());

    private String lent(Loan loan) {
        String to = loan.holder().map(player -> ListTitle.player(player, meanings)).orElse("the club");
        return loan.count() + " " + catalogue.title(loan.what()) + " are lent to " + to
                + (loan.until().isPresent() ? " until week " + loan.until().getAsInt() : "") + ".";
    }

    private List<ItemRow> items(ForceList list, List<Requirement> needs) {
        Map<Id, Integer> wanted = new TreeMap<>();
        needs.forEach(need -> need.anyOf().stream().filter(catalogue::isItem).findFirst()
                .ifPresent(item -> wanted.merge(item, need.count(), Integer::sum)));
        Map<Id, Integer> brought = new TreeMap<>();
        list.brought().forEach(one -> brought.merge(one.item(), one.count(), Integer::sum));
        brought.keySet().forEach(item -> wanted.putIfAbsent(item, 0));
        List<ItemRow> rows = new ArrayList<>();
        wanted.forEach((item, count) -> rows.add(new ItemRow(catalogue.title(item), item.name(), count,
                brought.getOrDefault(item, 0))));
        return rows;
    }
}
