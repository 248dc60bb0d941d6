package org.cantonment.stock.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.likeness.Truth;
import org.cantonment.stock.supply.Frames;
import org.cantonment.stock.supply.Stack;
import org.cantonment.stock.turnout.Build;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Posting;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.cantonment.stock.turnout.Worked;
import org.junit.jupiter.api.Test;

/** Turnouts with handfuls, caps, shares, conversions and single meanings against every way there is, on small cases. */
class EnumerationTest {

    private static final int CASES = 2000;
    private static final int FED = 1200;

    @Test
    void noTurnoutFillsMoreOrIsTruer() {
        Random random = new Random(41);
        int beyondFlow = 0;
        int complete = 0;
        for (int i = 0; i < CASES; i++) {
            Case of = new Case(random, false, 3);
            Turnout turnout = noneIsBetter(of, "case " + i + ": " + of);
            beyondFlow += turnout.reasons().stream().anyMatch(reason -> !(reason instanceof Reason.Block)) ? 1 : 0;
            complete += turnout.complete() ? 1 : 0;
        }
        assertTrue(beyondFlow > CASES / 100, "beyond flow: " + beyondFlow);
        assertTrue(complete > CASES / 10 && complete < CASES * 9 / 10, "complete: " + complete);
    }

    @Test
    void norWhereItIsBuiltToBeWorkedOver() {
        Random random = new Random(43);
        int fed = 0;
        for (int i = 0; i < FED; i++) {
            Case of = Case.fed(random);
            Turnout turnout = noneIsBetter(of, "case " + i + ": " + of);
            fed += turnout.worked().stream().anyMatch(worked -> !worked.built().isEmpty()) ? 1 : 0;
        }
        assertTrue(fed > 100, "worked over what was built for it: " + fed);
    }

    private static Turnout noneIsBetter(Case of, String about) {
        Depot depot = of.depot();
        List<Requirement> asked = of.asked();
        Turnout turnout = depot.turnout(asked, CancelToken.NEVER);
        assertArrayEquals(new Enumeration(of).best(), new long[] {turnout.filled(), turnout.standing(Truth.EXACT),
            turnout.standing(Truth.KINDRED), turnout.standing(Truth.STAND_IN)}, about);
        assertTrue(turnout.proven() && turnout.truest(), about);
        assertEquals(turnout.lacking(), turnout.reasons().stream().mapToInt(Reason::lacking).sum(), about);
        isThere(of, depot, turnout, about);
        Set<Id> lacking = depot.lacking(asked, CancelToken.NEVER);
        assertEquals(turnout.complete(), lacking.isEmpty(), about);
        oneMustGo(depot, asked, lacking, about);
        assertEquals(turnout, depot.turnout(asked, CancelToken.NEVER));
        return turnout;
    }

    /** The entries named are short by themselves. */
    private static void oneMustGo(Depot depot, List<Requirement> asked, Set<Id> lacking, String about) {
        if (!lacking.isEmpty()) {
            List<Requirement> named = asked.stream().filter(need -> lacking.contains(need.entry())).toList();
            assertTrue(depot.turnout(named, CancelToken.NEVER).lacking() > 0, about);
        }
    }

    /** Whatever stands somewhere lies there, or is built or worked over as the turnout says; and it may stand there. */
    private static void isThere(Case of, Depot depot, Turnout turnout, String about) {
        Map<Id, Integer> left = new HashMap<>();
        for (Stack stack : depot.supply().stacks()) {
            left.merge(stack.what(), stack.counted(), Integer::sum);
        }
        Map<Id, Integer> frames = new HashMap<>();
        depot.supply().frames().forEach(one -> frames.merge(one.part(), one.count(), Integer::sum));
        for (Build build : turnout.builds()) {
            assertTrue(frames.merge(build.part(), -build.frames(), Integer::sum) >= 0, about);
            Frames one = depot.supply().frames().stream().filter(some -> some.part().equals(build.part())).findFirst()
                    .orElseThrow();
            one.ways().stream().filter(way -> way.build().equals(build.build())).findFirst().orElseThrow().yields()
                    .forEach((type, count) -> left.merge(type, count * build.frames(), Integer::sum));
        }
        for (Worked worked : turnout.worked()) {
            worked.conversion().from().forEach((type, count) -> left.merge(type, -count * worked.times(), Integer::sum));
            left.merge(worked.conversion().to(), worked.conversion().gives() * worked.times(), Integer::sum);
        }
        for (Posting posting : turnout.postings()) {
            left.merge(posting.type(), -posting.count(), Integer::sum);
            int type = Integer.parseInt(posting.type().name().substring(1));
            int need = Integer.parseInt(posting.need().entry().name().substring(1));
            int truth = of.truth(type, need);
            assertTrue(truth == posting.truth().ordinal() || truth == 0 && posting.truth() == Truth.CONVERSION, about);
        }
        assertTrue(left.values().stream().allMatch(count -> count >= 0), about + " " + turnout);
    }
}
