package org.cantonment.rules.tests;

import static org.cantonment.rules.tests.ListOf.formation;
import static org.cantonment.rules.tests.ListOf.some;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.Judge;
import org.cantonment.rules.change.Answer;
import org.cantonment.rules.change.Fielding;
import org.cantonment.rules.change.Found;
import org.cantonment.rules.change.LeastChange;
import org.cantonment.rules.change.ListEdits;
import org.cantonment.rules.tests.SmallCase.Squad;
import org.cantonment.rules.tests.SmallCase.Written;
import org.junit.jupiter.api.Test;

/**
 * The least change against every change there is, on a family of small cases drawn from fixed seeds: points, units and
 * the place in the list, with and without what the player owns.
 */
class LeastChangeFamilyTest {

    private static final int CASES = 200;
    private static final int SPOKEN_CASES = 200;
    private static final int MOST_SPOKEN = 200;
    private static final int MOST_SPOKEN_LISTS = 3_000;
    private static final int MORE_UNITS = 3;
    private static final int MOST_LISTS = 300;
    private static final int MOST_MOVED = 10;

    private int compared;
    private int changed;
    private int hopeless;
    private int open;
    private int bounded;

    @Test
    void noChangeIsBetterAtLarge() {
        for (int seed = 0; seed < CASES; seed++) {
            SmallCase small = new SmallCase(seed);
            compare("seed " + seed, small, Fielding.ALL);
        }
        assertTrue(compared > CASES / 3 && changed > CASES / 5 && hopeless > 3 && open < CASES / 10,
                compared + " compared, " + changed + " changed, " + hopeless + " hopeless, " + open + " open");
    }

    @Test
    void noChangeIsBetterWithWhatIsOwned() {
        for (int seed = 0; seed < CASES; seed++) {
            SmallCase small = new SmallCase(seed);
            compare("owned, seed " + seed, small, small.fielding());
        }
        assertTrue(compared > CASES / 3 && changed > CASES / 5 && hopeless > 3 && open < CASES / 10,
                compared + " compared, " + changed + " changed, " + hopeless + " hopeless, " + open + " open");
    }

    @Test
    void noChangeIsBetterWhereRulesAskInExpressions() {
        for (int seed = 0; seed < SPOKEN_CASES; seed++) {
            SmallCase small = new SmallCase(seed, true);
            compare("spoken, seed " + seed, small, Fielding.ALL);
            compare("spoken and owned, seed " + seed, small, small.fielding());
        }
        assertTrue(compared > SPOKEN_CASES / 3 && changed > SPOKEN_CASES / 5 && bounded > 3,
                compared + " compared, " + changed + " changed, " + bounded + " given up");
    }

    private void compare(String name, SmallCase small, Fielding fielding) {
        ForceList list = list(small);
        Found found = LeastChange.search(small.after, small.before, list, small.situation, fielding, 1,
                small.spoken == null ? 20_000 : MOST_SPOKEN);
        if (small.spoken == null) {
            // Where formations might be put in without end, it stops and only says what can be no change.
            open += found.complete() ? 0 : 1;
            assertTrue(found.complete() || found.answers().isEmpty(), name);
        } else if (!found.complete()) {
            bounded(name, small, fielding, found);
            return;
        }
        Answer answer = found.answers().isEmpty() ? null : found.answers().get(0);
        int units = small.spoken == null ? Integer.MAX_VALUE : answer == null ? MORE_UNITS : answer.units() + 1;
        AllChanges.Best best = new AllChanges(small, fielding, answer == null ? MOST_MOVED : answer.moved(), units,
                small.spoken == null ? MOST_LISTS : MOST_SPOKEN_LISTS).run();
        if (best == null) {
            return;
        }
        compared++;
        if (answer == null) {
            hopeless++;
            assertTrue(best.moved >= found.bound(), name + " " + best.lists);
            assertEquals(Long.MAX_VALUE, best.moved, name + " " + best.lists);
            return;
        }
        changed += answer.units() > 0 ? 1 : 0;
        assertEquals(List.of(best.moved, best.units), List.of(answer.moved(), (long) answer.units()),
                name + " " + best.lists + " against " + answer.actions());
        assertTrue(best.lists.contains(AllChanges.text(answer.after())),
                name + " " + best.lists + " against " + answer.actions());
        assertEquals(answer.after(), ListEdits.apply(list, answer.actions()), name);
    }

    /** The search was given up: no change moves fewer points than it says, and what it found is legal. */
    private void bounded(String name, SmallCase small, Fielding fielding, Found found) {
        bounded++;
        for (Answer answer : found.answers()) {
            assertTrue(Judge.judge(small.after, answer.after(), small.situation).legal(), name);
            assertTrue(answer.moved() >= found.bound(), name);
        }
        AllChanges.Best best = new AllChanges(small, fielding, found.bound() - 1, MORE_UNITS,
                MOST_SPOKEN_LISTS).run();
        assertTrue(best == null || best.moved >= found.bound(), name + " " + (best == null ? "" : best.lists));
    }

    static ForceList list(SmallCase small) {
        ListOf list = new ListOf("L", "B");
        for (Squad squad : small.squads) {
            ListOf.Row[] rows = squad.rows().stream().map(LeastChangeFamilyTest::row).toArray(ListOf.Row[]::new);
            if (small.formations) {
                list.add(formation(squad.count(), "F", rows));
            } else {
                list.add(rows);
            }
        }
        return list.build();
    }

    private static ListOf.Row row(Written written) {
        ListOf.Row row = some(written.count(), "U" + written.unit()).of(written.strength());
        if (written.options() > 0) {
            row.with(written.options(), "O");
        }
        return written.pin() == null ? row : row.in(written.pin());
    }
}
