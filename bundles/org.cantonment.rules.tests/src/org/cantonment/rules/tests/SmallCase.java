package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Line.available;
import static org.cantonment.rules.tests.Line.becomes;
import static org.cantonment.rules.tests.Line.becomesByDifference;
import static org.cantonment.rules.tests.Line.billet;
import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.boundIn;
import static org.cantonment.rules.tests.Line.dearer;
import static org.cantonment.rules.tests.Line.either;
import static org.cantonment.rules.tests.Line.is;
import static org.cantonment.rules.tests.Line.needs;
import static org.cantonment.rules.tests.Line.option;
import static org.cantonment.rules.tests.Line.per;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.Line.taking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.rules.Relation;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;

/** A small rule set for two eras and a list written for the first of them, drawn by a seed. */
final class SmallCase {

    static final int UNITS = 3;

    /**
     * A unit's prices before and after for strengths 1 and 2, 0 where a strength is not offered; its option's price, 0 if
     * there is none, and whether it is offered before only.
     */
    record Kit(int[] before, int[] after, int option, boolean ends, int dearer, int beyond) {

        /** How often the option may be taken after. */
        int options() {
            return option > 0 && !ends ? 1 : 0;
        }
    }

    /** So many written alike in one formation, or at the top. */
    record Written(int unit, int count, int strength, int options, String pin) {
    }

    /** A formation of the list and how many of it. */
    record Squad(int count, List<Written> rows) {
    }

    final List<Kit> kits = new ArrayList<>();
    final List<Squad> squads = new ArrayList<>();
    final boolean formations;
    final boolean supports;
    /** The unit that is gone in the second era, or -1. */
    final int gone;
    final boolean difference;
    final int[] owned = new int[UNITS];
    final Ruling before;
    final Ruling after;
    final Situation situation;
    /** What its rules ask in expressions; null if they ask nothing. */
    final SpokenRules spoken;
    private final Random random;

    SmallCase(long seed) {
        this(seed, false);
    }

    /** @param speaks whether its rules ask in expressions, too */
    SmallCase(long seed, boolean speaks) {
        random = new Random(seed);
        Random ends = new Random(~seed);
        spoken = speaks ? new SpokenRules(random) : null;
        // Every change is looked at beside the search, and expressions leave more of them open.
        formations = speaks ? random.nextInt(4) == 0 : random.nextInt(3) > 0;
        supports = formations && random.nextInt(3) == 0;
        gone = random.nextInt(UNITS + 1) - 1;
        difference = random.nextBoolean();
        for (int u = 0; u < UNITS; u++) {
            boolean two = random.nextInt(3) == 0;
            kits.add(new Kit(new int[] {price(), two ? 3 + price() : 0}, two && speaks ? alike(price()) : new int[] {price(), two ? 3 + price() : 0},
                    random.nextInt(4) == 0 ? 1 + random.nextInt(3) : 0, ends.nextBoolean(),
                    random.nextInt(6) == 0 && (spoken == null || !spoken.asksOwnPoints) ? 2 : 0,
                    random.nextInt(2)));
            owned[u] = random.nextInt(4);
        }
        BookOf book = book();
        before = Court.ruling(Court.in("B/Before"), book);
        after = Court.ruling(Court.in("B/After"), book);
        Situation bare = Situation.BARE.withPoints(6 + random.nextInt(speaks ? 12 : 18), Optional.empty());
        situation = speaks ? bare.withBefore(spoken.before()) : bare;
        for (int s = 0; s < (formations ? 1 + random.nextInt(2) : 1); s++) {
            squads.add(new Squad(formations && random.nextInt(6) == 0 ? 2 : 1, rows()));
        }
    }

    /** Two strengths for the same points: only what is asked of the strength sets them apart. */
    private static int[] alike(int price) {
        return new int[] {price, price};
    }

    private int price() {
        return 3 + random.nextInt(6);
    }

    private List<Written> rows() {
        List<Written> rows = new ArrayList<>();
        int many = spoken == null ? random.nextInt(4) : 1 + random.nextInt(2);
        for (int i = 0; i < many; i++) {
            int unit = random.nextInt(UNITS);
            Kit kit = kits.get(unit);
            rows.add(new Written(unit, random.nextInt(4) == 0 ? 2 : 1, kit.before[1] > 0 ? 1 + random.nextInt(2) : 1,
                    kit.option > 0 ? random.nextInt(2) : 0,
                    formations && random.nextInt(8) == 0 ? "Line" : null));
        }
        return rows;
    }

    private BookOf book() {
        BookOf book = new BookOf("B").eras("Before", "After").kind("Odd");
        for (int u = 0; u < UNITS; u++) {
            book.unit("U" + u, lines(u).toArray(Line[]::new));
        }
        if (formations) {
            Line line = random.nextInt(3) == 0
                    ? either("Line", Span.of(random.nextInt(3), 2), "U" + any(), Span.of(random.nextInt(2), 1), "U" + any())
                    : billet("Line", Span.of(random.nextInt(2), 2), "U0", "U" + any());
            book.formation("F", line, billet("Rest", Span.of(random.nextInt(2), 1 + random.nextInt(2)), "U" + any(), "U2"));
        }
        if (supports) {
            book.support("S", Span.of(random.nextInt(2), 1), 1, random.nextBoolean() ? "F" : null, "U" + any());
        }
        for (int l = 0; l < random.nextInt(spoken == null ? 3 : 2); l++) {
            book.limit("L" + l, limit());
        }
        for (int l = 0; spoken != null && l < 1 + random.nextInt(2); l++) {
            book.limit("E" + l, spoken.limit(this::limit));
        }
        return book;
    }

    private int any() {
        return random.nextInt(UNITS);
    }

    private List<Line> lines(int u) {
        Kit kit = kits.get(u);
        List<Line> lines = new ArrayList<>();
        for (int strength = 1; strength <= 2; strength++) {
            if (kit.before[strength - 1] > 0) {
                lines.add(strength(strength, kit.before[strength - 1]));
                lines.add(strength(strength, kit.after[strength - 1]).from("After"));
            }
        }
        lines.add(needs(true, 1, "P" + u));
        lines.add(u % 2 == 1 ? is("Odd") : is());
        if (kit.option > 0) {
            lines.add(kit.ends ? option("O", kit.option).to("Before") : option("O", kit.option));
        }
        if (kit.dearer > 0) {
            lines.add(dearer(kit.dearer, kit.beyond));
        }
        if (spoken != null) {
            lines.addAll(spoken.surcharges(u));
        }
        if (u == gone) {
            lines.add(available().to("Before"));
            lines.add(difference ? becomesByDifference("U" + (u + 1) % UNITS) : becomes("U" + (u + 1) % UNITS));
        }
        return lines;
    }

    private Line limit() {
        String one = "U" + any();
        String other = "U" + any();
        Rounding rounding = Rounding.values()[random.nextInt(3)];
        return switch (random.nextInt(formations ? 12 : 10)) {
            case 0 -> bound(Span.atMost(random.nextInt(3)), one, other);
            case 1 -> bound(Span.atLeast(1 + random.nextInt(2)), one, other);
            case 2 -> bound(Measure.POINTS, Span.of(random.nextInt(6), 6 + random.nextInt(5)), rounding, "Odd");
            case 3 -> bound(Measure.PERCENT_OF_USED, Span.atMost(30 + random.nextInt(50)), rounding, one);
            case 4 -> bound(Measure.PERCENT_OF_USED, Span.atLeast(20 + random.nextInt(50)), rounding, one, other);
            case 5 -> bound(Measure.PERCENT_OF_LIMIT, Span.atMost(20 + random.nextInt(50)), rounding, one, other);
            case 6 -> per(Span.atMost(1), one, 1 + random.nextInt(2), other);
            case 7 -> taking(one, Relation.NEEDS, "Odd");
            case 8 -> taking(one, Relation.EXCLUDES, other);
            case 9 -> taking(one, Relation.MATCHES, other);
            case 10 -> boundIn(Reckoning.EACH_OF, "F", Span.of(random.nextInt(2), 1 + random.nextInt(2)), one, other);
            default -> bound(Span.atLeast(1 + random.nextInt(2)), "F");
        };
    }

    /** Pieces are not shared: of each unit's own as many as are owned. */
    Fielding fielding() {
        return needs -> {
            Set<Id> lacking = new TreeSet<>();
            for (int u = 0; u < UNITS && lacking.isEmpty(); u++) {
                int wanted = 0;
                for (Requirement need : needs) {
                    wanted += need.anyOf().equals(List.of(Id.of("B", "P" + u))) ? need.count() : 0;
                }
                for (Requirement need : needs) {
                    if (wanted > owned[u] && need.anyOf().equals(List.of(Id.of("B", "P" + u)))) {
                        lacking.add(need.entry());
                    }
                }
            }
            return lacking;
        };
    }
}
