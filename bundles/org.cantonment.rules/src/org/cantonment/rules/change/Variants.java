package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToLongFunction;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.Requirements;
import org.cantonment.rules.view.OptionView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/**
 * The ways to take a unit. Of those that no rule can tell apart only the one that moves least is kept: rules ask for
 * points, some for strengths or options, and what a player owns for needs.
 */
final class Variants {

    /** No unit is tried in more ways than this; those with fewer options come first. */
    static final int MOST = 4096;

    private static final Id ALONE = Id.of("alone");

    private final Ruling ruling;
    private final Telling telling;

    /** What sets two ways apart beside their points. */
    record Telling(boolean strengths, boolean options, boolean needs) {
    }

    Variants(Ruling ruling, Telling telling) {
        this.ruling = ruling;
        this.telling = telling;
    }

    /** Those worth trying, the ones that move least first. */
    List<Variant> of(UnitView unit, ToLongFunction<Variant> moved) {
        Map<List<Object>, Variant> best = new LinkedHashMap<>();
        for (Variant variant : all(unit)) {
            best.merge(told(variant), variant, (one, other) -> better(other, one, moved) ? other : one);
        }
        List<Variant> kept = new ArrayList<>(best.values());
        kept.sort((one, other) -> better(one, other, moved) ? -1 : better(other, one, moved) ? 1 : 0);
        return kept;
    }

    private static boolean better(Variant one, Variant other, ToLongFunction<Variant> moved) {
        int order = Long.compare(moved.applyAsLong(one), moved.applyAsLong(other));
        if (order == 0) {
            order = Integer.compare(one.extras(), other.extras());
        }
        return order == 0 ? one.strength() < other.strength() : order < 0;
    }

    /** Whether no rule can tell the two ways apart. */
    boolean alike(Variant one, Variant other) {
        return told(one).equals(told(other));
    }

    /** Whether the unit's own lines allow to take it so. */
    boolean offered(Variant variant) {
        UnitView unit = variant.unit();
        for (Taken taken : variant.options()) {
            OptionView option = unit.options().get(taken.option());
            if (taken.count() > 0 && (option == null || variant.times(taken.option()) > option.max())) {
                return false;
            }
        }
        List<Taken> real = variant.options().stream().filter(taken -> taken.count() > 0).toList();
        return unit.step(variant.strength()) != null && allowed(unit, real);
    }

    private List<Object> told(Variant variant) {
        List<Object> told = new ArrayList<>(List.of(variant.points()));
        if (telling.strengths()) {
            told.add(variant.strength());
        }
        if (telling.options()) {
            told.add(variant.options());
        }
        if (telling.needs()) {
            told.add(needs(variant));
        }
        return told;
    }

    /** What one such unit needs by itself. */
    List<Requirement> needs(Variant variant) {
        Entry entry = new Entry(ALONE, Optional.empty(), 1, variant.unit().id(), OptionalInt.of(variant.strength()),
                variant.options(), Optional.empty(), "", Optional.empty(), Body.EMPTY, List.of());
        ForceList list = new ForceList(ALONE, Optional.empty(), OptionalInt.empty(), List.of(), Optional.empty(),
                OptionalInt.empty(), new Body(List.of(entry), List.of()), List.of(), List.of(), List.of(), List.of());
        return Requirements.of(ruling, list, Map.of());
    }

    private static List<Variant> all(UnitView unit) {
        Set<Integer> strengths = new TreeSet<>();
        for (Step step : unit.steps()) {
            for (int strength = step.from(); strength <= step.to() && strengths.size() < MOST; strength++) {
                strengths.add(strength);
            }
        }
        List<Variant> all = new ArrayList<>();
        for (List<Taken> options : options(unit, MOST / strengths.size())) {
            long extra = 0;
            for (Taken taken : options) {
                extra += unit.options().get(taken.option()).cost().times(taken.count());
            }
            for (int strength : strengths) {
                all.add(new Variant(unit, strength, options, unit.points(strength) + extra));
            }
        }
        return all;
    }

    /** All ways to take options that the unit's own lines allow, with fewer first. */
    private static List<List<Taken>> options(UnitView unit, int most) {
        List<List<Taken>> found = new ArrayList<>(List.of(List.of()));
        for (OptionView option : unit.options().values()) {
            int before = found.size();
            for (int times = 1; times <= option.max() && found.size() < MOST; times++) {
                for (int i = 0; i < before && found.size() < MOST; i++) {
                    List<Taken> more = new ArrayList<>(found.get(i));
                    more.add(new Taken(times, option.name()));
                    found.add(more);
                }
            }
        }
        found.removeIf(some -> !allowed(unit, some));
        return found.subList(0, Math.max(1, Math.min(most, found.size())));
    }

    private static boolean allowed(UnitView unit, List<Taken> options) {
        Set<String> names = new TreeSet<>();
        Set<String> groups = new TreeSet<>();
        options.forEach(taken -> names.add(taken.option()));
        for (Taken taken : options) {
            OptionView option = unit.options().get(taken.option());
            if (!names.containsAll(option.needs()) || !option.groups().stream().allMatch(groups::add)) {
                return false;
            }
        }
        return true;
    }
}
