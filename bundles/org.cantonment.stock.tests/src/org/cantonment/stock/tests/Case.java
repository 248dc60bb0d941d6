package org.cantonment.stock.tests;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.range.Fixing;
import org.cantonment.domain.rules.Fact;
import org.cantonment.domain.rules.Level;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.turnout.Depot;

/**
 * A small question drawn by lot: what there is, what is allowed and what is needed, in plain numbers, so that whoever
 * checks an answer need not read it through the code under test.
 */
final class Case {

    /**
     * So many frames, each of which becomes one of these handfuls, with at most so many of a type to all of them. What stands
     * last in a handful are bits.
     */
    record Lot(int frames, int[][] ways, int cappedType, int cap, boolean loose) {
    }

    /** One type may stand for another, at most so many in a hundred; 100 for no end. */
    record Line(int what, int standsFor, int percent) {
    }

    /** So many of each type, and last of bits, become so many of another, at most so often. */
    record Turning(List<Integer> takes, int gives, int to, int times) {
    }

    /** So many of any of these types, and of the wide family or the narrow one in it. */
    record Wanted(int count, List<Integer> types, boolean wide, boolean narrow) {
    }

    final int types;
    final int[] built;
    final List<Lot> lots = new ArrayList<>();
    final List<Line> lines = new ArrayList<>();
    final List<Turning> turnings = new ArrayList<>();
    final List<Wanted> needs = new ArrayList<>();
    final boolean kindred;
    final boolean oneTable;

    /** @param simple whether there are only built pieces, families and lines without a share */
    Case(Random random, boolean simple, int size) {
        types = 2 + random.nextInt(size);
        built = new int[types + 1];
        for (int t = 0; t <= types; t++) {
            built[t] = random.nextInt(t == types ? 3 : 4);
        }
        kindred = random.nextBoolean();
        oneTable = !simple && random.nextInt(3) == 0;
        for (int i = 0; !simple && i < random.nextInt(3); i++) {
            lots.add(lot(random));
        }
        for (int i = 0; i < random.nextInt(simple ? size : 3); i++) {
            int percent = simple || random.nextBoolean() ? 100 : 25 * random.nextInt(4);
            lines.add(new Line(random.nextInt(types), random.nextInt(types), percent));
        }
        for (int i = simple ? 3 : random.nextInt(5); i < 2; i++) {
            turnings.add(turning(random));
        }
        for (int i = 0; i < 1 + random.nextInt(simple ? size : 3); i++) {
            List<Integer> named = new ArrayList<>();
            named.add(random.nextInt(types));
            if (random.nextInt(3) == 0) {
                named.add(random.nextInt(types));
            }
            needs.add(new Wanted(random.nextInt(5), named, random.nextInt(8) == 0, random.nextInt(8) == 0));
        }
    }

    /** One where little lies ready, and something is worth building to be worked over. */
    static Case fed(Random random) {
        Case of = new Case(random, false, 3);
        for (int t = 0; t < of.built.length; t++) {
            of.built[t] /= 2;
        }
        of.turnings.add(of.turning(random));
        Lot lot = of.lot(random);
        Turning turning = of.turnings.get(0);
        for (int t = 0; t < of.built.length; t++) {
            lot.ways()[0][t] = Math.max(lot.ways()[0][t], turning.takes().get(t) - random.nextInt(2));
        }
        of.lots.add(lot);
        of.needs.add(new Wanted(1 + random.nextInt(2), List.of(turning.to()), false, false));
        return of;
    }

    private Turning turning(Random random) {
        int from = random.nextInt(types);
        Integer[] takes = new Integer[types + 1];
        Arrays.fill(takes, 0);
        boolean bits = random.nextInt(3) == 0;
        takes[bits ? types : from] = 1 + random.nextInt(2);
        if (bits && random.nextBoolean()) {
            takes[from] = 1;
        }
        return new Turning(List.of(takes), 1 + random.nextInt(5) / 4, (from + 1) % types, 1 + random.nextInt(2));
    }

    private Lot lot(Random random) {
        int[][] ways = new int[1 + random.nextInt(3)][types + 1];
        for (int[] way : ways) {
            way[random.nextInt(types)] += 1 + random.nextInt(3);
            if (random.nextInt(4) == 0) {
                way[random.nextInt(types)]++;
            }
            way[types] = random.nextInt(3) / 2 * (1 + random.nextInt(2));
        }
        boolean capped = random.nextInt(3) == 0;
        return new Lot(1 + random.nextInt(2), ways, capped ? random.nextInt(types) : -1, random.nextInt(4),
                random.nextInt(4) == 0);
    }

    /** The even types are in the wide family, every fourth in the narrow one within it; odd types are in none. */
    boolean inWide(int type) {
        return type % 2 == 0;
    }

    boolean inNarrow(int type) {
        return type % 4 == 0;
    }

    Depot depot() {
        return things().depot(facts());
    }

    Catalogue catalogue() {
        return things().catalogue();
    }

    private Things things() {
        Things things = new Things().family("Wide", null).family("Narrow", "Wide").bits("Bits");
        if (built[types] > 0) {
            things.has(built[types] + " Bits");
        }
        for (int t = 0; t < types; t++) {
            things.piece("T" + t, inNarrow(t) ? "Narrow" : inWide(t) ? "Wide" : null);
            if (built[t] > 0) {
                things.has(built[t] + " T" + t);
            }
        }
        for (int l = 0; l < lots.size(); l++) {
            lay(things, l, lots.get(l));
        }
        return things;
    }

    private Fact[] facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(Things.allows(kindred ? Level.KINDRED : Level.EXACT));
        for (Line line : lines) {
            facts.add(Things.lets("T" + line.what(), "T" + line.standsFor(),
                    line.percent() == 100 ? OptionalInt.empty() : OptionalInt.of(line.percent())));
        }
        for (int i = 0; i < turnings.size(); i++) {
            Turning turning = turnings.get(i);
            List<String> from = new ArrayList<>();
            for (int t = 0; t <= types; t++) {
                if (turning.takes().get(t) > 0) {
                    from.add(turning.takes().get(t) + (t == types ? " Bits" : " T" + t));
                }
            }
            facts.add(Things.turns("Turning-" + i, String.join(" and ", from), turning.gives() + " T" + turning.to(),
                    OptionalInt.of(turning.times())));
        }
        if (oneTable) {
            facts.add(Things.oneTable());
        }
        return facts.toArray(Fact[]::new);
    }

    private void lay(Things things, int number, Lot lot) {
        List<String> ways = new ArrayList<>();
        for (int[] way : lot.ways()) {
            List<String> words = new ArrayList<>();
            for (int t = 0; t < types; t++) {
                if (way[t] > 0) {
                    words.add(way[t] + " T" + t);
                }
            }
            ways.add(String.join(" + ", words) + (way[types] > 0 ? " leaves " + way[types] + " Bits" : ""));
        }
        things.part("P" + number, lot.loose() ? Fixing.LOOSE_BETWEEN_GAMES : Fixing.GLUED, ways.toArray(String[]::new));
        if (lot.cappedType() < 0) {
            things.has(lot.frames() + " P" + number);
        } else {
            things.box("B" + number, List.of(Things.cap(lot.cap(), "T" + lot.cappedType())), List.of(),
                    lot.frames() + " P" + number);
            things.has("B" + number);
        }
    }

    List<Requirement> asked() {
        List<Requirement> asked = new ArrayList<>();
        for (int n = 0; n < needs.size(); n++) {
            List<String> names = new ArrayList<>();
            needs.get(n).types().forEach(type -> names.add("T" + type));
            if (needs.get(n).wide()) {
                names.add("Wide");
            }
            if (needs.get(n).narrow()) {
                names.add("Narrow");
            }
            asked.add(Things.need("E" + n, needs.get(n).count(), names.toArray(String[]::new)));
        }
        return asked;
    }

    /** How true a type is to a need: 0 exact, 1 kindred, 2 by a line, 3 not at all. */
    int truth(int type, int need) {
        if (exact(type, need)) {
            return 0;
        }
        for (int named : needs.get(need).types()) {
            if (kindred && (inNarrow(named) ? inNarrow(type) : inWide(named) && inWide(type))) {
                return 1;
            }
        }
        return lines.stream().anyMatch(line -> line.what() == type && exact(line.standsFor(), need)) ? 2 : 3;
    }

    boolean exact(int type, int need) {
        Wanted wanted = needs.get(need);
        return wanted.types().contains(type) || wanted.wide() && inWide(type) || wanted.narrow() && inNarrow(type);
    }

    @Override
    public String toString() {
        return "built " + Arrays.toString(built) + " lots " + lots.stream().map(lot -> lot.frames() + "x"
                + Arrays.deepToString(lot.ways()) + " at most " + lot.cap() + " of " + lot.cappedType() + (lot.loose() ? " loose" : "")).toList()
                + " lines " + lines + " turnings " + turnings + " needs " + needs + (kindred ? " kindred" : "")
                + (oneTable ? " one table" : "");
    }
}
