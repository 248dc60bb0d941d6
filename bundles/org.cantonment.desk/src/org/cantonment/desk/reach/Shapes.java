package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cantonment.desk.eras.Units;
import org.cantonment.domain.common.Id;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Ruling;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.reach.Places;
import org.cantonment.stock.reach.Shape;

/**
 * The formations of a ruling as a shelf sees them. A billet that may be filled in several ways makes several shapes, and so
 * does one that takes several formations: it is then filled with one of them throughout.
 */
final class Shapes {
    /** A formation with more ways to fill its billets is looked at in so many of them. */
    static final int MOST = 8;
    private static final int DEEPEST = 4;

    private final Ruling ruling;
    private final Map<Id, FieldUnit> units = new LinkedHashMap<>();

    Shapes(Ruling ruling) {
        this.ruling = ruling;
        Units.of(ruling).forEach(unit -> units.put(unit.unit(), unit));
    }

    /** The formations that may be taken now by this side; empty for any side. */
    List<FormationView> formations(Set<Id> sides) {
        List<FormationView> all = new ArrayList<>();
        for (Choice choice : ruling.choices()) {
            if (choice instanceof FormationView formation && formation.permission().allowed()
                    && (sides.isEmpty() || formation.sides().isEmpty()
                            || formation.sides().stream().anyMatch(sides::contains))) {
                all.add(formation);
            }
        }
        return all;
    }

    /** All shapes of a formation, for a player of these sides. */
    List<Shape> of(FormationView formation, Set<Id> sides) {
        return places(formation, sides, new HashSet<>()).stream().map(places -> new Shape(formation.id(), places)).toList();
    }

    private List<List<Places>> places(FormationView formation, Set<Id> sides, Set<Id> within) {
        List<List<Places>> all = List.of(List.of());
        if (within.size() >= DEEPEST || !within.add(formation.id())) {
            return all;
        }
        for (BilletView billet : formation.billets()) {
            List<List<Places>> ways = new ArrayList<>();
            for (Room room : billet.rooms()) {
                ways.addAll(ways(room, sides, within));
            }
            all = ways.isEmpty() ? all : joined(all, ways);
        }
        within.remove(formation.id());
        return all;
    }

    private List<List<Places>> ways(Room room, Set<Id> sides, Set<Id> within) {
        int min = room.span().min();
        int max = Math.max(min, Math.min(Places.MOST, room.span().max()));
        List<FieldUnit> here = units.values().stream().filter(unit -> room.of().takes(ruling.choice(unit.unit()).index())
                && serves(ruling.choice(unit.unit()), sides)).toList();
        List<List<Places>> ways = new ArrayList<>();
        List<FormationView> inner = formations(sides).stream().filter(formation -> room.of().takes(formation.index())).toList();
        if (!here.isEmpty() || inner.isEmpty()) {
            ways.add(List.of(new Places(min, max, here)));
        }
        for (FormationView formation : inner) {
            for (List<Places> places : places(formation, sides, within)) {
                ways.add(places.stream().map(one -> new Places(one.min() * min,
                        Math.max(one.min() * min, Math.min(Places.MOST, one.max() * max)), one.of())).toList());
            }
        }
        return ways;
    }

    private static boolean serves(Choice choice, Set<Id> sides) {
        return sides.isEmpty() || choice.sides().isEmpty() || choice.sides().stream().anyMatch(sides::contains);
    }

    private static List<List<Places>> joined(List<List<Places>> before, List<List<Places>> ways) {
        List<List<Places>> all = new ArrayList<>();
        for (List<Places> one : before) {
            for (List<Places> way : ways) {
                if (all.size() < MOST) {
                    List<Places> more = new ArrayList<>(one);
                    more.addAll(way);
                    all.add(more);
                }
            }
        }
        return all;
    }
}
