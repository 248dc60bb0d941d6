package org.cantonment.references.reach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

import org.cantonment.buying.reach.Asked;
import org.cantonment.buying.reach.Formation;
import org.cantonment.buying.reach.Formation.Billet;
import org.cantonment.buying.reach.Formation.Room;
import org.cantonment.buying.reach.Strength;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Validity;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.rules.Allows;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.domain.rules.Likeness;
import org.cantonment.domain.rules.OneTable;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Step;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.supply.Supply;
import org.cantonment.stock.supply.Way;

/**
 * A shelf and the formations of some eras, drawn by lot: types in families of three of which each may stand for the others,
 * parts that become one of several handfuls, units of one or two needs, billets with several units, some with two ways to fill
 * them, formations that hold others.
 *
 * @param family the family of each type, by its number
 * @param eras the formations of each era
 */
public record Outlook(Catalogue catalogue, Supply supply, Allowance allowance, int[] family,
        List<Map<Id, Formation>> eras) {

    private static final Id CARD = Id.of("Book", "Card");
    private static final int KIN = 3;

    /**
     * Draws.
     *
     * @param formations how many in each era; every fifth holds others
     */
    public static Outlook draw(int formations, int eras, long seed) {
        return new Lot(formations, new Random(seed * 104_729 + 3)).draw(eras);
    }

    /** A type by its number. */
    public static Id type(int number) {
        return Id.of("Range", "Type-" + number);
    }

    /** Every formation of every era, at both strengths. */
    public List<Asked> asked() {
        List<Asked> all = new ArrayList<>();
        for (Map<Id, Formation> era : eras) {
            for (Id formation : era.keySet()) {
                for (Strength strength : Strength.values()) {
                    all.add(new Asked(era, formation, strength, allowance));
                }
            }
        }
        return all;
    }

    private static final class Lot {
        private final int formations;
        private final Random random;
        private final int types;
        private final List<FieldUnit> units = new ArrayList<>();

        Lot(int formations, Random random) {
            this.formations = formations;
            this.random = random;
            types = KIN * (4 + formations / 5);
        }

        Outlook draw(int count) {
            List<Family> families = new ArrayList<>();
            List<Piece> pieces = new ArrayList<>();
            int[] family = new int[types];
            for (int t = 0; t < types; t++) {
                family[t] = t / KIN;
                Id of = Id.of("Range", "Family-" + family[t]);
                if (t % KIN == 0) {
                    families.add(new Family(of, "", Optional.empty(), List.of()));
                }
                pieces.add(new Piece(type(t), "", Optional.of(of), List.of()));
            }
            Catalogue catalogue = Catalogue.of(List.of(new Range(Id.of("Range"), "", Optional.empty(), families, pieces,
                    List.of(), List.of(), List.of(), List.of(), List.of(), List.of())), List.of());
            List<Fact> facts = new ArrayList<>(List.of(new Allows(CARD.line(1), Level.KINDRED, Validity.ALWAYS)));
            if (random.nextInt(3) == 0) {
                facts.add(new OneTable(CARD.line(2), Validity.ALWAYS));
            }
            Allowance allowance = Allowance.of(catalogue, List.of(new Likeness(CARD, "", facts, List.of())),
                    Optional.empty(), Terms.ANY);
            Supply supply = shelf();
            for (int u = 0; u < types; u++) {
                units.add(unit(u));
            }
            List<Map<Id, Formation>> eras = new ArrayList<>();
            for (int e = 0; e < count; e++) {
                eras.add(era());
            }
            return new Outlook(catalogue, supply, allowance, family, eras);
        }

        private Supply shelf() {
            List<Stack> stacks = new ArrayList<>();
            for (int t = 0; t < types; t++) {
                stacks.add(new Stack(type(t), random.nextInt(3), 0, 0));
            }
            List<Frames> frames = new ArrayList<>();
            for (int p = 0; p < types / 4; p++) {
                Id part = Id.of("Range", "Part-" + p);
                List<Way> ways = new ArrayList<>();
                for (int w = 0; w < 2 + random.nextInt(2); w++) {
                    Map<Id, Integer> gives = new TreeMap<>(Map.of(type(random.nextInt(types)), 1 + random.nextInt(3)));
                    if (random.nextInt(4) == 0) {
                        gives.merge(type(random.nextInt(types)), 1, Integer::sum);
                    }
                    ways.add(new Way(part.line(w), gives));
                }
                frames.add(new Frames(part, 1 + random.nextInt(2), false, ways, -1, Fixing.GLUED));
            }
            return new Supply(stacks, frames, List.of(), List.of());
        }

        private FieldUnit unit(int number) {
            int least = 1 + random.nextInt(4);
            List<Step> steps = new ArrayList<>();
            int second = random.nextInt(3) == 0 ? random.nextInt(types) : -1;
            int first = random.nextInt(types);
            for (int strength : new int[] {least, least + 1 + random.nextInt(3)}) {
                List<Requirement> needs = new ArrayList<>();
                needs.add(new Requirement(Id.of("any"), strength, List.of(type(first))));
                if (second >= 0) {
                    needs.add(new Requirement(Id.of("any"), 1 + strength / 2, List.of(type(second))));
                }
                steps.add(new Step(strength, 5 * strength, needs));
            }
            return new FieldUnit(Id.of("Book", "Unit-" + number), List.of(), steps);
        }

        private Map<Id, Formation> era() {
            Map<Id, Formation> era = new LinkedHashMap<>();
            for (int f = 0; f < formations; f++) {
                Id id = Id.of("Book", "Formation-" + f);
                List<Id> inner = f % 5 == 4 ? List.of(Id.of("Book", "Formation-" + (f - 1)),
                        Id.of("Book", "Formation-" + (f - 2))) : List.of();
                List<Billet> billets = new ArrayList<>();
                for (int b = 0; b < 2 + random.nextInt(3); b++) {
                    billets.add(billet(b == 0 ? inner : List.of()));
                }
                era.put(id, new Formation(id, billets));
            }
            return era;
        }

        private Billet billet(List<Id> inner) {
            List<Room> rooms = new ArrayList<>();
            for (int r = 0; r < 1 + random.nextInt(4) / 3; r++) {
                int min = inner.isEmpty() ? random.nextInt(3) : 1 + random.nextInt(2);
                List<FieldUnit> some = new ArrayList<>();
                for (int u = 0; u < (inner.isEmpty() ? 1 + random.nextInt(4) : 0); u++) {
                    some.add(units.get(random.nextInt(units.size())));
                }
                rooms.add(new Room(min, min + random.nextInt(3), some.stream().distinct().toList(), inner));
            }
            return new Billet(rooms);
        }
    }
}
