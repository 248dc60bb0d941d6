package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.Supply;

/**
 * A supply made ready to be asked many times what it is enough for. May be asked from any thread.
 *
 * <p>Each question is taken apart into what has nothing to do with each other. What no handful, conversion or double
 * meaning touches is a flow and always exact; the rest is searched, exact up to a number of branches, and beyond that the
 * best found with its bound.
 */
public final class Depot {

    /** A turnout looks at so many branches of each part of the question at the most. */
    public static final int BRANCHES = 4_000;
    /** What is only asked whether it is enough looks at so many. */
    public static final int BRANCHES_FOR_ENOUGH = 300;

    private final Store store;

    private Depot(Store store) {
        this.store = store;
    }

    /** Makes it ready. */
    public static Depot of(Catalogue catalogue, Supply supply, Allowance allowance) {
        return new Depot(new Store(catalogue, supply, allowance));
    }

    /** What is there. */
    public Supply supply() {
        return store.supply();
    }

    /**
     * Who stands where, and what is short.
     *
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public Turnout turnout(List<Requirement> needs, CancelToken cancel) {
        return turnout(needs, BRANCHES, cancel);
    }

    /**
     * The same with another number of branches.
     *
     * @param branches so many of each part of the question at the most, at least 1
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public Turnout turnout(List<Requirement> needs, int branches, CancelToken cancel) {
        return turnout(needs, Before.NOTHING, branches, cancel);
    }

    /**
     * The same; of answers as good, the one that is most as it was last time.
     *
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public Turnout turnout(List<Requirement> needs, Before before, CancelToken cancel) {
        return turnout(needs, before, BRANCHES, cancel);
    }

    private Turnout turnout(List<Requirement> needs, Before before, int branches, CancelToken cancel) {
        Answer answer = new Answer(before);
        List<Requirement> aside = needs.stream().filter(this::aside).toList();
        List<NeedClass> classes = aside.isEmpty() ? alike(needs) : classes(needs);
        for (Instance in : InstanceMaker.of(store, classes, before)) {
            answer.add(in, Search.of(in, true, branches, cancel));
        }
        return answer.turnout(needs, aside);
    }

    /**
     * The entries of which not all can be fielded: empty if everything is there, else those of one block that is short, the
     * smallest there is, or of one part of the question that a search could not fill. One of them must go, or nothing
     * that is there fills what they ask for. (Where a line of likeness allows a share of what is asked for, an entry more
     * can allow more stand-ins; that alone is not reckoned with.)
     *
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    public Set<Id> lacking(List<Requirement> needs, CancelToken cancel) {
        for (Instance in : InstanceMaker.of(store, classes(needs))) {
            Search.Outcome outcome = Search.of(in, false, BRANCHES_FOR_ENOUGH, cancel);
            if (outcome.best().filled() < in.needed()) {
                List<Reason.Block> blocks = Blocks.of(outcome.root());
                return blocks.stream().map(block -> entries(block.needs()))
                        .min(Comparator.comparingInt((Set<Id> some) -> some.size()))
                        .orElseGet(() -> entries(in.classes().stream().flatMap(one -> one.needs().stream()).toList()));
            }
        }
        return Set.of();
    }

    /**
     * Whether it is enough, as far as so many branches of each part of the question tell.
     *
     * @param enough whether a turnout was found that fills everything
     * @param decided whether there is none if it was not
     * @param branches how many were looked at
     */
    public record Look(boolean enough, boolean decided, int branches) {
    }

    /** Looks whether it is enough. */
    public Look look(List<Requirement> needs, int branches, CancelToken cancel) {
        int looked = 0;
        boolean decided = true;
        boolean enough = true;
        for (Instance in : InstanceMaker.of(store, classes(needs))) {
            Search.Outcome outcome = Search.of(in, false, branches, cancel);
            looked += outcome.steps();
            if (outcome.bound() < in.needed()) {
                return new Look(false, true, looked);
            }
            enough &= outcome.best().filled() == in.needed();
            decided &= outcome.best().filled() == in.needed();
        }
        return new Look(enough, decided, looked);
    }

    private static Set<Id> entries(List<Requirement> needs) {
        Set<Id> entries = new TreeSet<>();
        needs.forEach(need -> entries.add(need.entry()));
        return entries;
    }

    private boolean aside(Requirement need) {
        if (need.count() > 0) {
            for (Id name : need.anyOf()) {
                if (store.catalogue().isItem(name)) {
                    return true;
                }
            }
        }
        return false;
    }

    private List<NeedClass> classes(List<Requirement> needs) {
        return alike(counted(needs));
    }

    /** Needs that the very same pieces may fill, together. */
    private List<NeedClass> alike(List<Requirement> needs) {
        Map<Integer, NeedClass> classes = new LinkedHashMap<>();
        for (Requirement need : needs) {
            if (need.count() > 0) {
                Taker taker = store.taker(need);
                classes.computeIfAbsent(taker.number(), number -> new NeedClass(taker, new ArrayList<>())).needs().add(need);
            }
        }
        return List.copyOf(classes.values());
    }

    /** The types there are or could be, of which any may fill one of these needs. */
    public Set<Id> usable(List<Requirement> needs) {
        Set<Id> usable = new TreeSet<>();
        for (NeedClass one : classes(needs)) {
            for (int type : one.taker().types()) {
                usable.add(store.types().get(type));
            }
            one.taker().shares().forEach(share -> share.types().forEach(type -> usable.add(store.types().get(type))));
        }
        return usable;
    }

    /** The same, with what may be worked over into any of these. */
    public Set<Id> useful(List<Requirement> needs) {
        Set<Id> usable = usable(needs);
        Set<Id> useful = new TreeSet<>(usable);
        store.allowance().conversions().stream().filter(one -> usable.contains(one.to()))
                .forEach(one -> useful.addAll(one.from().keySet()));
        return useful;
    }

    /** The needs that a shelf could fill at all, those for items left out. */
    public List<Requirement> counted(List<Requirement> needs) {
        return needs.stream().filter(need -> need.count() > 0 && !aside(need)).toList();
    }

    /** Which of these questions have to do with each other: their numbers, put together where they have. */
    public List<List<Integer>> apart(List<List<Requirement>> questions) {
        int[] leader = new int[questions.size()];
        Arrays.setAll(leader, i -> i);
        Map<Id, Integer> asker = new HashMap<>();
        List<Requirement> all = new ArrayList<>();
        for (int q = 0; q < leader.length; q++) {
            Id name = Id.of("Question").line(q);
            asker.put(name, q);
            questions.get(q).forEach(need -> all.add(new Requirement(name, need.unit(), need.count(), need.anyOf())));
        }
        for (Instance in : InstanceMaker.of(store, classes(all))) {
            int first = -1;
            for (NeedClass one : in.classes()) {
                for (Requirement need : one.needs()) {
                    int q = leader[asker.get(need.entry())];
                    int to = first < 0 ? q : leader[first];
                    Arrays.setAll(leader, i -> leader[i] == q ? to : leader[i]);
                    first = first < 0 ? q : first;
                }
            }
        }
        Map<Integer, List<Integer>> together = new LinkedHashMap<>();
        for (int q = 0; q < leader.length; q++) {
            together.computeIfAbsent(leader[q], root -> new ArrayList<>()).add(q);
        }
        return List.copyOf(together.values());
    }

    /** What may stand for what here. */
    public Allowance allowance() {
        return store.allowance();
    }
}
