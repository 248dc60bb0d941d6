package org.cantonment.stock.eras;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Posting;
import org.cantonment.stock.turnout.Turnout;

/** Reckons a shelf through the eras. */
final class EraReckoning {

    /** What is known of one era. */
    private record Seen(EraUnits era, Depot depot, Set<Id> usable, Chosen chosen) {
    }

    /** An army, and what stands in each of its units. */
    private record Chosen(Army army, List<Standing> standing) {
    }

    /** A unit of an army, and the types that stand in it. */
    private record Standing(int points, Set<Id> types) {
    }

    private final Catalogue catalogue;
    private final Supply supply;
    private final Optional<Id> side;
    private final CancelToken cancel;
    private final Progress progress;

    EraReckoning(Catalogue catalogue, Supply supply, Optional<Id> side, CancelToken cancel, Progress progress) {
        this.catalogue = catalogue;
        this.supply = supply;
        this.side = side;
        this.cancel = cancel;
        this.progress = progress;
    }

    ShelfEras reckon(List<EraUnits> eras) {
        List<Seen> seen = new ArrayList<>();
        List<EraAnswer> answers = new ArrayList<>();
        for (EraUnits era : eras) {
            progress.at(answers.size(), eras.size(), "The shelf in " + era.era().name());
            Depot depot = Depot.of(catalogue, supply, era.allowance());
            List<FieldUnit> units = era.units().stream()
                    .filter(unit -> side.isEmpty() || belongs(unit, side.get())).toList();
            Seen one = new Seen(era, depot, depot.usable(needsOf(units)), choose(depot, units));
            seen.add(one);
            answers.add(new EraAnswer(era.era(), units.stream().map(unit -> answer(depot, unit)).toList(),
                    shared(one.usable(), one.usable()), one.chosen().army()));
        }
        List<Carry> carries = new ArrayList<>();
        for (Seen from : seen) {
            for (Seen to : seen) {
                carries.add(carry(from, to));
            }
        }
        return new ShelfEras(answers, carries);
    }

    private static boolean belongs(FieldUnit unit, Id side) {
        return unit.sides().isEmpty() || unit.sides().contains(side);
    }

    /** The needs of all units at all strengths, each as of its unit. */
    private static List<Requirement> needsOf(List<FieldUnit> units) {
        List<Requirement> needs = new ArrayList<>();
        for (FieldUnit unit : units) {
            for (Step step : unit.steps()) {
                needs.addAll(candidate(0, unit, step, step.needs()).needs());
            }
        }
        return needs;
    }

    private static Candidate candidate(int place, FieldUnit unit, Step step, List<Requirement> needs) {
        return new Candidate(place, unit.unit(), unit.most(), step, needs.stream()
                .map(need -> new Requirement(unit.unit(), Optional.of(unit.unit()), need.count(), need.anyOf())).toList());
    }

    private UnitAnswer answer(Depot depot, FieldUnit unit) {
        Step least = unit.steps().get(0);
        Candidate one = candidate(0, unit, least, depot.counted(least.needs()));
        if (one.needs().isEmpty()) {
            return new UnitAnswer(unit.unit(), least.strength(), UnitAnswer.ENDLESS, true, 0, List.of());
        }
        Gallop.Found copies = Gallop.most(UnitAnswer.ENDLESS,
                count -> depot.look(one.times(count), Depot.BRANCHES_FOR_ENOUGH, cancel));
        if (copies.most() > 0) {
            return new UnitAnswer(unit.unit(), least.strength(), copies.most(), copies.decided(), 0, List.of());
        }
        Turnout turnout = depot.turnout(one.needs(), cancel);
        return new UnitAnswer(unit.unit(), least.strength(), 0, turnout.proven(), turnout.lacking(), turnout.reasons());
    }

    /** The greatest army of one side; of several as great that of the first. */
    private Chosen choose(Depot depot, List<FieldUnit> units) {
        Set<Id> sides = new TreeSet<>();
        units.forEach(unit -> sides.addAll(unit.sides()));
        side.ifPresent(own -> sides.retainAll(Set.of(own)));
        Chosen best = null;
        List<Optional<Id>> asked = new ArrayList<>();
        sides.forEach(one -> asked.add(Optional.of(one)));
        if (asked.isEmpty()) {
            asked.add(Optional.empty());
        }
        for (Optional<Id> whose : asked) {
            Chosen one = army(depot, whose, units.stream()
                    .filter(unit -> whose.isEmpty() || belongs(unit, whose.get())).toList());
            best = best == null || one.army().points() > best.army().points() ? one : best;
        }
        return best;
    }

    private Chosen army(Depot depot, Optional<Id> whose, List<FieldUnit> units) {
        List<Candidate> candidates = new ArrayList<>();
        for (FieldUnit unit : units) {
            for (Step step : unit.steps()) {
                Candidate one = candidate(candidates.size(), unit, step, depot.counted(step.needs()));
                boolean counts = step.points() > 0 && unit.most() > 0 && !one.needs().isEmpty();
                if (counts && mayBeThere(depot.look(one.needs(), Depot.BRANCHES_FOR_ENOUGH, cancel))) {
                    candidates.add(one);
                }
            }
        }
        long points = 0;
        long bound = 0;
        Map<Candidate, Integer> counts = new LinkedHashMap<>();
        candidates.forEach(one -> counts.put(one, 0));
        for (List<Integer> together : depot.apart(candidates.stream().map(Candidate::needs).toList())) {
            ArmySearch.Found found = ArmySearch.of(depot, together.stream().map(candidates::get).toList(), cancel);
            points += found.points();
            bound += found.bound();
            for (int i = 0; i < found.counts().length; i++) {
                counts.put(found.candidates().get(i), found.counts()[i]);
            }
        }
        counts.values().removeIf(count -> count == 0);
        List<Fielded> fielded = new ArrayList<>();
        counts.forEach((one, count) -> fielded.add(
                new Fielded(one.unit(), one.step().strength(), one.step().points(), count)));
        return new Chosen(new Army(whose, (int) points, (int) bound, fielded), standing(depot, counts));
    }

    private static boolean mayBeThere(Depot.Look look) {
        return look.enough() || !look.decided();
    }

    private List<Standing> standing(Depot depot, Map<Candidate, Integer> counts) {
        List<Requirement> needs = new ArrayList<>();
        Map<Id, Standing> standing = new LinkedHashMap<>();
        counts.forEach((one, count) -> {
            for (int i = 1; i <= count; i++) {
                List<Requirement> copy = one.copy(i);
                needs.addAll(copy);
                standing.put(copy.get(0).entry(), new Standing(one.step().points(), new HashSet<>()));
            }
        });
        for (Posting posting : depot.turnout(needs, cancel).postings()) {
            standing.get(posting.need().entry()).types().add(posting.type());
        }
        return List.copyOf(standing.values());
    }

    private Carry carry(Seen from, Seen to) {
        int points = from.chosen().standing().stream().filter(one -> to.usable().containsAll(one.types()))
                .mapToInt(Standing::points).sum();
        return new Carry(from.era().era(), to.era().era(), shared(from.usable(), from.usable()),
                shared(from.usable(), to.usable()), from.chosen().army().points(), points);
    }

    /** How many pieces and unbuilt parts are of use in both. */
    private int shared(Set<Id> one, Set<Id> other) {
        long shared = 0;
        for (Stack stack : supply.stacks()) {
            shared += one.contains(stack.what()) && other.contains(stack.what()) ? stack.counted() : 0;
        }
        for (Frames frames : supply.frames()) {
            shared += serves(frames, one) && serves(frames, other) ? frames.count() : 0;
        }
        return (int) Math.min(Integer.MAX_VALUE, shared);
    }

    private static boolean serves(Frames frames, Set<Id> usable) {
        return frames.ways().stream().anyMatch(way -> way.gives().keySet().stream().anyMatch(usable::contains));
    }
}
