package org.cantonment.buying.tests;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.buying.reach.Asked;
import org.cantonment.buying.reach.Formation;
import org.cantonment.buying.reach.Formation.Billet;
import org.cantonment.buying.reach.Formation.Room;
import org.cantonment.buying.reach.Strength;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.domain.rules.Stands;
import org.cantonment.domain.rules.Turns;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Step;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.supply.BoxCap;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/** A small shelf and a small formation drawn from a seed, and all its fillings one by one. */
final class ReachCase {

    private final Random random;
    private final int types;
    private final List<FieldUnit> units = new ArrayList<>();
    private final Map<Id, Formation> known = new LinkedHashMap<>();
    final Shop shop = new Shop();
    final Supply supply;
    final Allowance allowance;

    ReachCase(long seed) {
        random = new Random(seed * 6_151 + 11);
        types = 2 + random.nextInt(3);
        shop.family("Kin", "T0", "T1");
        for (int t = 2; t < types; t++) {
            shop.pieces("T" + t);
        }
        supply = draw();
        allowance = shop.allowance(facts());
        for (int u = 0; u < 2 + random.nextInt(2); u++) {
            units.add(new FieldUnit(Id.of("Book", "U" + u), List.of(), List.of(step(u, 1), step(u, 2))));
        }
        boolean nested = random.nextInt(3) == 0;
        if (nested) {
            formation("Inner", 1, List.of());
        }
        formation("Whole", 1 + random.nextInt(2), nested ? List.of(Id.of("Book", "Inner")) : List.of());
        for (int b = 0; b < 1 + random.nextInt(3); b++) {
            shop.box("B" + b, (1 + random.nextInt(3)) + " T" + random.nextInt(types) + ", " + (1 + random.nextInt(2)) + " T"
                    + random.nextInt(types), (1 + random.nextInt(9)) + ".00");
        }
    }

    Asked asked(Strength strength) {
        return new Asked(known, Id.of("Book", "Whole"), strength, allowance);
    }

    private Id type() {
        return Shop.id("T" + random.nextInt(types));
    }

    private Supply draw() {
        List<Stack> stacks = new ArrayList<>();
        for (int t = 0; t < types; t++) {
            stacks.add(new Stack(Shop.id("T" + t), random.nextInt(4), random.nextInt(4) / 3, random.nextInt(2)));
        }
        List<Frames> frames = new ArrayList<>();
        for (int f = 0; f < random.nextInt(3); f++) {
            Id part = Shop.id("P" + f);
            List<Way> ways = new ArrayList<>();
            for (int w = 0; w < 1 + random.nextInt(3); w++) {
                Map<Id, Integer> gives = new TreeMap<>(Map.of(type(), 1 + random.nextInt(3)));
                gives.merge(type(), random.nextInt(3) / 2 + 1, Integer::sum);
                ways.add(new Way(part.line(w), gives));
            }
            frames.add(new Frames(part, 1 + random.nextInt(2), false, ways, -1, Fixing.GLUED));
        }
        List<BoxCap> caps = frames.isEmpty() || random.nextInt(3) > 0 ? List.of()
                : List.of(new BoxCap(Shop.id("Cap"), random.nextInt(3), Set.of(type()), List.of(0)));
        return new Supply(stacks, frames, caps, List.of());
    }

    private Fact[] facts() {
        List<Fact> facts = new ArrayList<>();
        Id card = Id.of("Book/Card");
        facts.add(new Allows(card.line(1), random.nextBoolean() ? Level.KINDRED : Level.EXACT, Validity.ALWAYS));
        for (int i = 0; i < random.nextInt(3); i++) {
            facts.add(new Stands(card.line(2 + i), List.of(type()), List.of(type()), random.nextBoolean()
                    ? OptionalInt.of(20 + random.nextInt(70)) : OptionalInt.empty(), false, Validity.ALWAYS));
        }
        if (random.nextInt(3) == 0) {
            facts.add(new OneTable(card.line(8), Validity.ALWAYS));
        }
        if (random.nextInt(4) == 0) {
            facts.add(new Turns(card.line(9), List.of(some(type())), some(type()), OptionalInt.of(1 + random.nextInt(2)),
                    Validity.ALWAYS));
        }
        return facts.toArray(Fact[]::new);
    }

    private Content some(Id what) {
        return new Content(Certainty.KNOWN, 1 + random.nextInt(2), what);
    }

    private Step step(int unit, int times) {
        List<Requirement> needs = new ArrayList<>();
        for (int n = 0; n < 1 + random.nextInt(3) / 2; n++) {
            needs.add(new Requirement(Id.of("any"), (1 + random.nextInt(3)) * times,
                    random.nextInt(4) == 0 ? List.of(type(), type()) : List.of(type())));
        }
        return new Step(times, 5 * times, needs);
    }

    private void formation(String name, int billets, List<Id> inner) {
        List<Billet> all = new ArrayList<>();
        for (int b = 0; b < billets; b++) {
            List<Room> rooms = new ArrayList<>();
            for (int r = 0; r < 1 + random.nextInt(3) / 2; r++) {
                int min = random.nextInt(3);
                rooms.add(new Room(min, min + random.nextInt(2), units.subList(0, random.nextInt(units.size() + 1)),
                        b == 0 ? inner : List.of()));
            }
            all.add(new Billet(rooms));
        }
        known.put(Id.of("Book", name), new Formation(Id.of("Book", name), all));
    }

    /** What each filling of a formation needs: by need, how many; empty if there is none. */
    Set<Map<List<Id>, Integer>> fillings(Id formation, Strength strength) {
        Set<Map<List<Id>, Integer>> all = new LinkedHashSet<>(Set.of(Map.of()));
        for (Billet billet : known.get(formation).billets()) {
            Set<Map<List<Id>, Integer>> ways = new LinkedHashSet<>();
            billet.rooms().forEach(room -> ways.addAll(fillings(room, strength)));
            all = sums(all, ways);
        }
        return all;
    }

    private Set<Map<List<Id>, Integer>> fillings(Room room, Strength strength) {
        Set<Map<List<Id>, Integer>> one = new LinkedHashSet<>();
        for (FieldUnit unit : room.units()) {
            Map<List<Id>, Integer> needs = new LinkedHashMap<>();
            unit.steps().get(strength.ordinal()).needs().forEach(need -> needs.merge(need.anyOf(), need.count(), Integer::sum));
            one.add(needs);
        }
        room.formations().forEach(inner -> one.addAll(fillings(inner, strength)));
        if (one.isEmpty()) {
            return room.min() > 0 ? Set.of() : Set.of(Map.of());
        }
        Set<Map<List<Id>, Integer>> all = Set.of(Map.of());
        for (int i = 0; i < (strength == Strength.LEAST ? room.min() : room.max()); i++) {
            all = sums(all, one);
        }
        return all;
    }

    private static Set<Map<List<Id>, Integer>> sums(Set<Map<List<Id>, Integer>> some, Set<Map<List<Id>, Integer>> others) {
        Set<Map<List<Id>, Integer>> all = new LinkedHashSet<>();
        for (Map<List<Id>, Integer> one : some) {
            for (Map<List<Id>, Integer> other : others) {
                Map<List<Id>, Integer> sum = new LinkedHashMap<>(one);
                other.forEach((what, count) -> sum.merge(what, count, Integer::sum));
                all.add(sum);
            }
        }
        return all;
    }

    static List<Requirement> needs(Map<List<Id>, Integer> counts) {
        List<Requirement> needs = new ArrayList<>();
        counts.forEach((anyOf, count) -> needs.add(new Requirement(Id.of("List").line(needs.size() + 1), count, anyOf)));
        return needs;
    }
}
