package org.cantonment.desk.judging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.NamesBook;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.rules.Era;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.rules.view.Holdings;

/** What all books of a folder mean, found by id. Immutable, but for what it works out once and keeps. */
public final class Meanings {
    private final Map<Id, RuleSet> rules = new LinkedHashMap<>();
    private final List<RuleSet> ruleSets;
    private final Map<Id, Campaign> campaigns = new HashMap<>();
    private final List<Campaign> inOrder;
    private final List<Week> weeks;
    private final List<NamesBook> names;
    private final List<ForceList> lists;
    private final List<Range> ranges;
    private final List<Shelf> shelves;
    private final Map<Id, List<ForceList>> byPlayer = new HashMap<>();

    private AtHand atHand;
    private Map<Id, Id> kin;
    private Boolean asksShelves;

    /** Of two books of rules, or two campaigns, with the same id the first counts. */
    public Meanings(List<RuleSet> rules, List<Campaign> campaigns, List<Week> weeks, List<NamesBook> names,
            List<ForceList> lists, List<Range> ranges, List<Shelf> shelves) {
        rules.forEach(book -> this.rules.putIfAbsent(book.id(), book));
        this.ruleSets = List.copyOf(this.rules.values());
        campaigns.forEach(campaign -> this.campaigns.putIfAbsent(campaign.id(), campaign));
        this.inOrder = List.copyOf(campaigns);
        this.weeks = List.copyOf(weeks);
        this.names = List.copyOf(names);
        this.lists = List.copyOf(lists);
        this.ranges = List.copyOf(ranges);
        this.shelves = List.copyOf(shelves);
        for (ForceList list : lists) {
            list.player().ifPresent(p -> byPlayer.computeIfAbsent(p, id -> new ArrayList<>()).add(list));
        }
        byPlayer.values().forEach(all -> all.sort(Comparator.comparingInt((ForceList l) -> l.round().orElse(0))
                .thenComparing(ForceList::id)));
    }

    /** The campaigns, in the order of their files. */
    public List<Campaign> campaigns() {
        return inOrder;
    }

    /** The weeks that have books of their own. */
    public List<Week> weeks() {
        return weeks;
    }

    /** The books of names. */
    public List<NamesBook> names() {
        return names;
    }

    /** The lists, in the order of their files. */
    public List<ForceList> lists() {
        return lists;
    }

    /** The ranges, in the order of their files. */
    public List<Range> ranges() {
        return ranges;
    }

    /** The shelves, in the order of their files; two may belong to the same player. */
    public List<Shelf> shelves() {
        return shelves;
    }

    /** The rule sets, in the order of their files; of two with the same id only the first. */
    public List<RuleSet> ruleSets() {
        return ruleSets;
    }

    /** The rule set of this id. */
    public Optional<RuleSet> rules(Id id) {
        return Optional.ofNullable(rules.get(id));
    }

    /** The campaign that a player, round or role belongs to. */
    public Optional<Campaign> campaignOf(Id member) {
        // A campaign whose name cannot be read has members all the same; their ids then begin with a slash.
        return member.book().isEmpty() ? Optional.empty() : Optional.ofNullable(campaigns.get(Id.of(member.book())));
    }

    /** The player of this id, as the campaign has it. */
    public Optional<Player> player(Id id) {
        return campaignOf(id).stream().flatMap(campaign -> campaign.players().stream()).filter(one -> one.id().equals(id))
                .findFirst();
    }

    /** Whose a list or a shelf is; the first owner of a shelf that several have. Empty of anything else. */
    public Optional<Player> owner(Object book) {
        Optional<Id> whose = book instanceof ForceList list ? list.player()
                : book instanceof Shelf shelf ? shelf.owners().stream().findFirst() : Optional.empty();
        return whose.flatMap(this::player);
    }

    /** A player's lists for rounds, earlier rounds first. */
    public List<ForceList> listsOf(Id player) {
        return Collections.unmodifiableList(byPlayer.getOrDefault(player, List.of()));
    }

    /** What people call an era; its name if no rule set here has it. */
    public String eraTitle(Id era) {
        return ruleSets.stream().flatMap(book -> book.eras().stream()).filter(e -> e.id().equals(era)).findFirst()
                .map(Era::title).orElse(era.name());
    }

    /** The pieces that a list's player owns when it is played, if any shelf says; only where a rule asks for them. */
    synchronized Optional<Holdings> atHand(ForceList list) {
        if (list.player().isEmpty() || !asksShelves()) {
            return Optional.empty();
        }
        if (atHand == null) {
            atHand = new AtHand(this);
        }
        return atHand.of(list);
    }

    private synchronized AtHand counted() {
        return atHand;
    }

    /** The family of each piece type, and of each family the one it lies in. */
    synchronized Map<Id, Id> kin() {
        if (kin == null) {
            kin = Map.copyOf(AtHand.kin(ranges));
        }
        return kin;
    }

    /**
     * Takes over what other meanings have worked out from the same books, so that what is equal is the same
     * object and is told so at a glance.
     */
    void takeOver(Meanings others) {
        if (!sameObjects(ranges, others.ranges)) {
            return;
        }
        Map<Id, Id> known = others.kin();
        synchronized (this) {
            kin = known;
        }
        if (sameObjects(shelves, others.shelves) && sameObjects(weeks, others.weeks) && sameObjects(inOrder, others.inOrder)
                && sameObjects(ruleSets, others.ruleSets)) {
            AtHand counted = others.counted();
            synchronized (this) {
                atHand = counted;
            }
        }
    }

    /** Whether nothing that a list's case is made of differs from what it was in those meanings. */
    boolean sameAround(ForceList list, Meanings others) {
        return sameObjects(ruleSets, others.ruleSets) && sameObjects(inOrder, others.inOrder)
                && (!asksShelves() || sameObjects(ranges, others.ranges) && sameObjects(shelves, others.shelves)
                        && sameObjects(weeks, others.weeks))
                && (list.player().isEmpty() || sameObjects(listsOf(list.player().get()),
                        others.listsOf(list.player().get())));
    }

    /** Whether any rule here asks for pieces, so that a shelf may change a verdict. */
    private synchronized boolean asksShelves() {
        if (asksShelves == null) {
            asksShelves = ruleSets.stream().anyMatch(PiecesAsked::in);
        }
        return asksShelves;
    }

    private static boolean sameObjects(List<?> some, List<?> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            if (some.get(i) != others.get(i)) {
                return false;
            }
        }
        return true;
    }

    /**
     * The books of these ids and all that they stand over, lower ones first and none twice; what is not there is left
     * out, and a circle is cut where it closes.
     */
    public List<RuleSet> closure(List<Id> books) {
        Set<Id> begun = new LinkedHashSet<>();
        List<RuleSet> all = new ArrayList<>();
        books.forEach(book -> visit(book, begun, all));
        return all;
    }

    private void visit(Id id, Set<Id> begun, List<RuleSet> all) {
        RuleSet book = rules.get(id);
        if (book != null && begun.add(id)) {
            book.over().forEach(lower -> visit(lower, begun, all));
            all.add(book);
        }
    }
}
