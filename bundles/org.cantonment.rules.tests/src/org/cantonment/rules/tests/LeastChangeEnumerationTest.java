package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.Line.available;
import static org.cantonment.rules.tests.Line.bound;
import static org.cantonment.rules.tests.Line.is;
import static org.cantonment.rules.tests.Line.per;
import static org.cantonment.rules.tests.Line.strength;
import static org.cantonment.rules.tests.Line.taking;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;

import org.cantonment.domain.common.Span;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.Measure;
import org.cantonment.domain.rules.Relation;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.rules.Judge;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.Found;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.Situation;
import org.junit.jupiter.api.Test;

/** The least change against every list there is, on small cases drawn from a fixed seed. */
class LeastChangeEnumerationTest {

    private static final int CASES = 60;
    private static final int UNITS = 3;
    private static final int MOST_OF_EACH = 14;
    private static final int MOST_LISTS = 20_000;

    private final Random random = new Random(1815);

    @Test
    void noListIsLegalThatMovesLess() {
        int changed = 0;
        for (int i = 0; i < CASES; i++) {
            int[] old = prices();
            int[] now = prices();
            int[] there = counts();
            BookOf book = book(old, now);
            Situation situation = Situation.BARE.withPoints(12 + random.nextInt(12), Optional.empty());
            Ruling after = Court.ruling(Court.in("B/After"), book);
            Found found = LeastChange.search(after, Court.ruling(Court.in("B/Before"), book), list(there), situation,
                    Fielding.ALL, 1, MOST_LISTS);
            long least = least(after, situation, there, old, now);
            assertTrue(found.complete(), "case " + i + " " + found);
            assertEquals(least, found.answers().isEmpty() ? Long.MAX_VALUE : found.answers().get(0).moved(), "case " + i + " " + found);
            changed += least > 0 && least < Long.MAX_VALUE ? 1 : 0;
        }
        assertTrue(changed > CASES / 2, "only " + changed + " cases ask for a change");
    }

    private int[] prices() {
        return random.ints(UNITS, 1, 9).toArray();
    }

    private int[] counts() {
        return random.ints(UNITS, 0, 4).toArray();
    }

    private BookOf book(int[] old, int[] now) {
        BookOf book = new BookOf("B").eras("Before", "After").kind("Odd");
        int gone = random.nextInt(UNITS + 1);
        for (int u = 0; u < UNITS; u++) {
            Line price = strength(1, now[u]).from("After");
            Line kind = u % 2 == 1 ? is("Odd") : is();
            if (u == gone) {
                book.unit("U" + u, strength(1, old[u]), price, kind, available().to("Before"));
            } else {
                book.unit("U" + u, strength(1, old[u]), price, kind);
            }
        }
        for (int l = 0; l < 1 + random.nextInt(3); l++) {
            book.limit("L" + l, line());
        }
        return book;
    }

    private Line line() {
        String one = "U" + random.nextInt(UNITS);
        String other = "U" + random.nextInt(UNITS);
        return switch (random.nextInt(7)) {
            case 0 -> bound(Span.atMost(random.nextInt(3)), one);
            case 1 -> bound(Span.atLeast(1 + random.nextInt(2)), one, other);
            case 2 -> bound(Measure.POINTS, Span.atMost(4 + random.nextInt(8)), Rounding.EXACT, "Odd");
            case 3 -> bound(Measure.PERCENT_OF_USED, Span.atMost(30 + random.nextInt(50)), Rounding.EXACT, one);
            case 4 -> per(Span.atMost(1), one, 1 + random.nextInt(2), other);
            case 5 -> taking(one, Relation.NEEDS, "Odd");
            default -> taking(one, Relation.EXCLUDES, other);
        };
    }

    private static ForceList list(int... counts) {
        ListOf list = new ListOf("L", "B");
        for (int u = 0; u < UNITS; u++) {
            if (counts[u] > 0) {
                list.add(some(counts[u], "U" + u));
            }
        }
        return list.build();
    }

    private static long least(Ruling ruling, Situation situation, int[] there, int[] old, int[] now) {
        long least = Long.MAX_VALUE;
        for (int a = 0; a <= MOST_OF_EACH; a++) {
            for (int b = 0; b <= MOST_OF_EACH; b++) {
                for (int c = 0; c <= MOST_OF_EACH; c++) {
                    int[] wanted = {a, b, c};
                    long moved = 0;
                    for (int u = 0; u < UNITS; u++) {
                        moved += wanted[u] > there[u] ? (long) (wanted[u] - there[u]) * now[u]
                                : (long) (there[u] - wanted[u]) * old[u];
                    }
                    if (moved < least && Judge.judge(ruling, list(wanted), situation).legal()) {
                        least = moved;
                    }
                }
            }
        }
        return least;
    }
}
