package org.cantonment.buying.reach;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.buying.formulate.Formulation;
import org.cantonment.buying.formulate.Sought;
import org.cantonment.buying.market.Market;
import org.cantonment.buying.plan.Question;
import org.cantonment.buying.plan.Target;
import org.cantonment.buying.reach.Near.Missing;
import org.cantonment.buying.solve.Outcome;
import org.cantonment.buying.solve.Programme;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Accepted;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Conversion;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Posting;
import org.cantonment.stock.turnout.Turnout;

/**
 * How far a shelf is from formations, in pieces: of all that may stand in a formation, what lacks least. What stands where
 * and who stands for whom is one programme, in which a piece that is missing costs one; what comes out is looked at once more
 * as a turnout. Questions that come to the same programme are asked once.
 */
public final class Reach {

    private static final Id NAME = Id.of("formation");

    private final Catalogue catalogue;
    private final Supply supply;
    private final Map<Programme, Outcome> known = new HashMap<>();
    private final Map<Allowance, Depot> depots = new IdentityHashMap<>();
    private final Map<Supply, Reach> together = new IdentityHashMap<>();
    private final Map<Asked, Set<Id>> useful = new IdentityHashMap<>();

    /** For what is there. */
    public Reach(Catalogue catalogue, Supply supply) {
        this.catalogue = catalogue;
        this.supply = supply;
    }

    /**
     * The filling that lacks least; empty if a billet that must be filled has no unit.
     *
     * @throws Cancelled if the token says so
     */
    public Optional<Near> near(Asked asked, CancelToken cancel) {
        cancel.check();
        Roster roster = new Roster(asked, Trying.WHAT_STANDS_FIRST);
        if (!roster.possible()) {
            return Optional.empty();
        }
        Sought sought = roster.sought(1);
        Formulation formulation = new Formulation(question(roster, asked.allowance()), sought, cancel);
        Outcome outcome = solve(formulation.programme(), cancel);
        if (!outcome.found()) {
            return Optional.empty();
        }
        return Optional.of(read(roster.filling(outcome.values()), formulation, outcome, asked.allowance(), cancel));
    }

    /**
     * Whether a formation that lacks so many pieces can be fielded once a box is there, too.
     *
     * @param lacking how many pieces it lacks without the box, at least 1
     * @param load what lies in the box
     * @throws Cancelled if the token says so
     */
    public boolean opens(Asked asked, int lacking, Supply load, CancelToken cancel) {
        if (mostOf(load, asked) < lacking) {
            return false;
        }
        return together.computeIfAbsent(load, one -> new Reach(catalogue, supply.plus(one))).near(asked, cancel)
                .filter(near -> near.lacking() == 0).isPresent();
    }

    /** No box closes more than it brings of what is of use, where what is worked over may become several. */
    private long mostOf(Supply load, Asked asked) {
        Set<Id> here = useful.computeIfAbsent(asked, this::useful);
        int gives = asked.allowance().conversions().stream().mapToInt(Conversion::gives).max().orElse(1);
        long pieces = load.stacks().stream().filter(stack -> here.contains(stack.what())).mapToLong(Stack::counted).sum();
        for (Frames frames : load.frames()) {
            pieces += frames.count() * frames.ways().stream().mapToLong(way -> way.yields().entrySet().stream()
                    .filter(one -> here.contains(one.getKey())).mapToLong(Map.Entry::getValue).sum()).max().orElse(0);
        }
        return pieces * Math.max(1, gives);
    }

    private Set<Id> useful(Asked asked) {
        Set<Id> types = new HashSet<>();
        for (Requirement need : new Roster(asked, Trying.WHAT_STANDS_FIRST).atMost()) {
            Accepted accepted = asked.allowance().accepted(catalogue, need.anyOf(), need.unit());
            types.addAll(accepted.types().keySet());
            accepted.standIns().values().forEach(types::addAll);
        }
        asked.allowance().conversions().stream().filter(turn -> types.contains(turn.to()))
                .forEach(turn -> types.addAll(turn.from().keySet()));
        return types;
    }

    private Question question(Roster roster, Allowance allowance) {
        Market nothing = new Market(catalogue, List.of(), Map.of(), Map.of(), List.of());
        return Question.of(nothing, supply, List.of(Target.now(NAME, "", roster.atMost(), allowance)));
    }

    private Outcome solve(Programme programme, CancelToken cancel) {
        Outcome outcome = known.get(programme);
        if (outcome == null) {
            outcome = Trying.WHAT_STANDS_FIRST.solve(programme, cancel);
            cancel.check();
            known.put(programme, outcome);
        }
        return outcome;
    }

    private Near read(Filling filling, Formulation formulation, Outcome outcome, Allowance allowance, CancelToken cancel) {
        List<Requirement> needs = filling.needs().stream().filter(need -> need.count() > 0
                && need.anyOf().stream().noneMatch(catalogue::isItem)).toList();
        int needed = needs.stream().mapToInt(Requirement::count).sum();
        List<Requirement> standing = new ArrayList<>();
        List<Missing> missing = new ArrayList<>();
        Map<Object, Long> left = new IdentityHashMap<>();
        for (Requirement need : needs) {
            Object group = formulation.group(need);
            long more = left.computeIfAbsent(group, key -> formulation.missing(outcome.values(), key));
            int here = (int) Math.min(more, need.count());
            left.put(group, more - here);
            if (here > 0) {
                missing.add(new Missing(here, need.anyOf()));
            }
            if (here < need.count()) {
                standing.add(new Requirement(need.entry(), need.unit(), need.count() - here, need.anyOf()));
            }
        }
        boolean proven = outcome.state() == Outcome.State.PROVEN;
        Depot depot = depots.computeIfAbsent(allowance, one -> Depot.of(catalogue, supply, one));
        if (depot.look(standing, Depot.BRANCHES, cancel).enough()) {
            return new Near(filling, needed, together(missing), proven);
        }
        Turnout turnout = depot.turnout(needs, cancel);
        return new Near(filling, needed, together(missing(needs, turnout)), proven && turnout.lacking() == outcome.cost());
    }

    private static List<Missing> missing(List<Requirement> needs, Turnout turnout) {
        Map<Requirement, Integer> standing = new HashMap<>();
        for (Posting posting : turnout.postings()) {
            standing.merge(posting.need(), posting.count(), Integer::sum);
        }
        return needs.stream().map(need -> new Missing(need.count() - standing.getOrDefault(need, 0), need.anyOf()))
                .filter(one -> one.count() > 0).toList();
    }

    private static List<Missing> together(List<Missing> all) {
        Map<List<Id>, Integer> counts = new LinkedHashMap<>();
        all.forEach(one -> counts.merge(one.anyOf(), one.count(), Integer::sum));
        List<Missing> some = new ArrayList<>();
        counts.forEach((anyOf, count) -> some.add(new Missing(count, anyOf)));
        return some;
    }
}
