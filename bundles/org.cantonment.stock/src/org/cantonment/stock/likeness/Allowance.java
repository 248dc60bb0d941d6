package org.cantonment.stock.likeness;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.stock.Catalogue;

/**
 * What may stand for what at one time.
 *
 * <p>How true a piece must be of itself is said by the round if it says so, else by the {@code allows} lines of the cards
 * that hold then, the strictest of them, else it must be exact. Beside that, whatever a {@code lets} or {@code turns} line
 * names is allowed, unless the round says exact or kindred: then only the round's own lines are.
 *
 * <p>A {@code lets} line goes one way and one step: what stands for another may not stand for a third because of that, so
 * lines in a circle do no harm. Pieces, families and units may stand on either side:
 * <ul>
 * <li>a piece type or a family stands for itself, all types in it included;
 * <li>a unit on the left means the models it needs in any era, at any strength and with any option;
 * <li>a unit on the right means whatever an entry of that unit needs.
 * </ul>
 * Where a unit stands for a unit, the models that only the one uses may stand for those that only the other uses: the
 * crank cars of a crank troop for the pike cars of a pike car troop, but not its officer for a car, since both have one.
 */
public final class Allowance {

    /** Nothing but what is named. */
    public static final Allowance EXACT = new Allowance(Level.EXACT, List.of(), List.of(), false);

    private final Level level;
    private final List<StandInLine> lines;
    private final List<Conversion> conversions;
    private final boolean oneTable;

    Allowance(Level level, List<StandInLine> lines, List<Conversion> conversions, boolean oneTable) {
        this.level = level;
        this.lines = List.copyOf(lines);
        this.conversions = List.copyOf(conversions);
        this.oneTable = oneTable;
    }

    /** What these cards and the round allow on these terms. */
    public static Allowance of(Catalogue catalogue, Collection<Likeness> cards, Optional<Round> round, Terms terms) {
        return new AllowanceMaker(catalogue, terms).make(cards, round);
    }

    /** How true a piece must be that no line names. */
    public Level level() {
        return level;
    }

    /** The lines of likeness that hold, in the order they are numbered. */
    public List<StandIn> standIns() {
        return lines.stream().map(StandInLine::standIn).toList();
    }

    /** Whether nothing may stand but what is named and what is kindred to it. */
    public boolean plain() {
        return lines.isEmpty();
    }

    /** What may be worked over. */
    public List<Conversion> conversions() {
        return conversions;
    }

    /** Whether a type that stands for itself stands for nothing else that evening. */
    public boolean oneTable() {
        return oneTable;
    }

    /** The family of which all are kindred to a type; empty if it must be exact, or has none. */
    public Optional<Id> kindred(Catalogue catalogue, Id type) {
        return level == Level.EXACT ? Optional.empty() : catalogue.family(type);
    }

    /** Families keep their types in order, so they need only be merged. */
    private Collection<Id> withKin(Catalogue catalogue, List<Id> anyOf, Set<Id> exact) {
        Collection<Id> all = exact;
        for (Id named : anyOf) {
            Set<Id> kin = kindred(catalogue, named).map(catalogue::meant).orElse(Set.of());
            all = kin.containsAll(all) ? kin : merged(List.copyOf(all), kin);
        }
        return all;
    }

    private static List<Id> merged(List<Id> some, Collection<Id> others) {
        List<Id> all = new ArrayList<>(some.size() + others.size());
        int at = 0;
        for (Id other : others) {
            while (at < some.size() && !some.get(at).equals(other) && some.get(at).compareTo(other) < 0) {
                all.add(some.get(at++));
            }
            at += at < some.size() && some.get(at).equals(other) ? 1 : 0;
            all.add(other);
        }
        all.addAll(some.subList(at, some.size()));
        return all;
    }

    /** What may fill a need of any of these types and families, of an entry of this unit. */
    public Accepted accepted(Catalogue catalogue, List<Id> anyOf, Optional<Id> unit) {
        Set<Id> exact = catalogue.meant(anyOf);
        Collection<Id> all = withKin(catalogue, anyOf, exact);
        Map<Id, Truth> types = new LinkedHashMap<>(2 * all.size());
        for (Id type : all) {
            types.put(type, exact.contains(type) ? Truth.EXACT : Truth.KINDRED);
        }
        return new Accepted(types, lines.isEmpty() ? Map.of() : standIns(exact, unit, types.keySet()));
    }

    /** The types that may stand for these by lines of likeness, by the place of the line; lines for these alone are left out. */
    private Map<Integer, Set<Id>> standIns(Set<Id> exact, Optional<Id> unit, Set<Id> truer) {
        Map<Integer, Set<Id>> standIns = new TreeMap<>();
        for (int i = 0; i < lines.size(); i++) {
            Set<Id> may = lines.get(i).standing(exact, unit);
            if (!truer.containsAll(may)) {
                standIns.put(i, may);
            }
        }
        return standIns;
    }
}
