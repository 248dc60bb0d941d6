package org.cantonment.buying.reach;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.cantonment.buying.formulate.Sought;
import org.cantonment.buying.reach.Formation.Billet;
import org.cantonment.buying.reach.Formation.Room;
import org.cantonment.buying.solve.ProgrammeMaker;
import org.cantonment.buying.solve.ProgrammeMaker.Sum;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.eras.Step;

/**
 * The choice of what stands in a formation, as the beginning of a programme: how many billets are filled through which of
 * their rooms, how many places of a room have which unit or formation. Formations that are alike are counted together, for
 * all that matters is how many there are of each unit. A formation never lies within itself.
 */
final class Roster {

    /** Beyond so many of a thing nobody counts. */
    private static final long ENDLESS = 2_000_000;

    /** So many, as columns and besides, and never more than so many. */
    private record Count(Sum sum, long besides, long most) {

        static Count of(long besides) {
            return new Count(new Sum(), besides, besides);
        }

        Count plus(Count other) {
            return new Count(new Sum().add(1, sum).add(1, other.sum), besides + other.besides,
                    Math.min(ENDLESS, most + other.most));
        }

        long at(long[] values) {
            return besides + sum.value(values);
        }
    }

    /** So many of a unit in a billet. */
    private record Placed(Id formation, int billet, FieldUnit unit, Count count) {
    }

    private final Map<Id, Formation> known;
    private final Strength strength;
    private final Trying trying;
    private final ProgrammeMaker maker = new ProgrammeMaker();
    private final Map<Id, Count> counts = new HashMap<>();
    private final List<Id> downwards = new ArrayList<>();
    private final Map<Id, Set<Id>> within = new HashMap<>();
    private final Set<Id> possible = new LinkedHashSet<>();
    private final Map<Id, List<Placed>> placed = new LinkedHashMap<>();
    private final Id root;

    Roster(Asked asked, Trying trying) {
        this.known = asked.known();
        this.root = asked.formation();
        this.strength = asked.strength();
        this.trying = trying;
        sort(root, new LinkedHashSet<>());
        for (int i = 0; i < downwards.size(); i++) {
            Formation formation = known.get(downwards.get(i));
            if (formation.billets().stream().allMatch(billet -> billet.rooms().isEmpty()
                    || billet.rooms().stream().anyMatch(room -> opens(formation, room)))) {
                possible.add(formation.id());
            }
        }
        if (possible()) {
            counts.put(root, Count.of(1));
            for (int i = downwards.size() - 1; i >= 0; i--) {
                if (counts.containsKey(downwards.get(i))) {
                    lay(known.get(downwards.get(i)));
                }
            }
        }
    }

    /** Whether every billet that must be filled can be. */
    boolean possible() {
        return possible.contains(root);
    }

    /** Those within come before what they are within; a way back into what is being looked at is no way. */
    private void sort(Id id, Set<Id> path) {
        path.add(id);
        Set<Id> inner = new LinkedHashSet<>();
        for (Billet billet : known.get(id).billets()) {
            for (Room room : billet.rooms()) {
                room.formations().stream().filter(one -> known.containsKey(one) && !path.contains(one)).forEach(inner::add);
            }
        }
        within.put(id, inner);
        for (Id one : inner) {
            if (!downwards.contains(one)) {
                sort(one, path);
            }
        }
        path.remove(id);
        downwards.add(id);
    }

    private List<Id> formations(Formation formation, Room room) {
        return room.formations().stream().distinct().filter(one -> within.get(formation.id()).contains(one)
                && possible.contains(one)).toList();
    }

    private boolean filled(Formation formation, Room room) {
        return !room.units().isEmpty() || !formations(formation, room).isEmpty();
    }

    private boolean opens(Formation formation, Room room) {
        return room.min() == 0 || filled(formation, room);
    }

    private void lay(Formation formation) {
        for (int b = 0; b < formation.billets().size(); b++) {
            List<Room> rooms = formation.billets().get(b).rooms().stream().filter(room -> opens(formation, room)).toList();
            Count all = counts.get(formation.id());
            Count left = all;
            for (int r = 0; r < rooms.size(); r++) {
                Count through = r == rooms.size() - 1 ? left : column(all.most());
                if (r < rooms.size() - 1) {
                    left = new Count(new Sum().add(1, left.sum()).add(-1, through.sum()), left.besides(), all.most());
                }
                lay(formation, b, rooms.get(r), through);
            }
            if (rooms.size() > 1) {
                maker.atLeast(left.sum(), -left.besides());
            }
        }
    }

    private Count column(long most) {
        return new Count(new Sum().add(1, maker.column("", 0, 0, most, trying.rank())), 0, most);
    }

    private void lay(Formation formation, int billet, Room room, Count times) {
        List<Id> inner = formations(formation, room);
        int places = filled(formation, room) ? room.places(strength) : 0;
        int ways = room.units().size() + inner.size();
        if (places == 0) {
            return;
        }
        Count all = new Count(new Sum().add(places, times.sum()), places * times.besides(),
                Math.min(ENDLESS, places * times.most()));
        Count left = all;
        for (int w = 0; w < ways; w++) {
            Count here = w == ways - 1 ? left : column(all.most());
            if (w < ways - 1) {
                left = new Count(new Sum().add(1, left.sum()).add(-1, here.sum()), left.besides(), all.most());
            }
            if (w < room.units().size()) {
                placed.computeIfAbsent(formation.id(), id -> new ArrayList<>())
                        .add(new Placed(formation.id(), billet, room.units().get(w), here));
            } else {
                counts.merge(inner.get(w - room.units().size()), here, Count::plus);
            }
        }
        if (ways > 1) {
            maker.atLeast(left.sum(), -left.besides());
        }
    }

    private Step step(FieldUnit unit) {
        return unit.steps().get(strength == Strength.LEAST ? 0 : unit.steps().size() - 1);
    }

    /** The choice, with a price for each piece that is missing; 0 if none may be. */
    Sought sought(long missing) {
        List<Sought.Open> units = new ArrayList<>();
        placed.values().forEach(some -> some.forEach(one -> units.add(new Sought.Open(one.count().sum(),
                one.count().besides(), one.count().most(), step(one.unit()).needs()))));
        return new Sought(maker.make(), units, missing);
    }

    /** What was chosen: billet by billet, what lies within a formation behind it. */
    Filling filling(long[] values) {
        List<Fielded> units = new ArrayList<>();
        List<Requirement> needs = new ArrayList<>();
        for (Id formation : inOrder(root, new LinkedHashSet<>())) {
            Map<List<Object>, Integer> byUnit = new LinkedHashMap<>();
            Map<List<Object>, FieldUnit> whose = new HashMap<>();
            for (Placed one : placed.getOrDefault(formation, List.of())) {
                List<Object> key = List.of(one.billet(), one.unit().unit());
                byUnit.merge(key, (int) one.count().at(values), Integer::sum);
                whose.put(key, one.unit());
            }
            byUnit.forEach((key, count) -> {
                if (count > 0) {
                    place(whose.get(key), count, units, needs);
                }
            });
        }
        return new Filling(units, needs);
    }

    private void place(FieldUnit unit, int count, List<Fielded> units, List<Requirement> needs) {
        Step step = step(unit);
        units.add(new Fielded(unit.unit(), step.strength(), step.points(), count));
        Id entry = root.child("place-" + units.size());
        Map<List<Id>, Long> counts = new LinkedHashMap<>();
        step.needs().forEach(need -> counts.merge(need.anyOf(), (long) need.count() * count, Long::sum));
        counts.forEach((anyOf, all) -> needs.add(new Requirement(entry, Optional.of(unit.unit()),
                (int) Math.min(ENDLESS, all), anyOf)));
    }

    private Set<Id> inOrder(Id id, Set<Id> seen) {
        if (seen.add(id)) {
            within.get(id).forEach(one -> inOrder(one, seen));
        }
        return seen;
    }

    /** A target that needs as much as any choice could need. */
    List<Requirement> atMost() {
        List<Requirement> needs = new ArrayList<>();
        placed.values().forEach(some -> some.forEach(one -> step(one.unit()).needs().forEach(need ->
                needs.add(new Requirement(root, Optional.of(one.unit().unit()),
                        (int) Math.min(ENDLESS, need.count() * one.count().most()), need.anyOf())))));
        return needs;
    }
}
