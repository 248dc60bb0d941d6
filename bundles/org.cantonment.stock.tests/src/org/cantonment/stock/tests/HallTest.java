package org.cantonment.stock.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Reason;
import org.cantonment.stock.turnout.Turnout;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;

/**
 * Shortages that a flow explains, on thousands of questions drawn from fixed seeds. Outside checks: the greatest flow by
 * JGraphT (push-relabel), the theorem of Hall (P. Hall, On Representatives of Subsets, 1935) in the form with
 * deficiencies, and that of König: what a greatest flow lacks is the greatest deficiency of any set of needs.
 */
class HallTest {

    private static final int CASES = 2000;

    @Test
    void everyShortageIsCountedInDisjointBlocksThatAddUpToIt() {
        Random random = new Random(1931);
        int twoBlocks = 0;
        for (int i = 0; i < CASES; i++) {
            Case of = new Case(random, true, 8);
            List<Requirement> asked = of.asked();
            Turnout turnout = of.depot().turnout(asked, CancelToken.NEVER);
            String about = "case " + i + ": " + of;
            assertEquals(greatestFlow(of), turnout.filled(), about);
            assertTrue(turnout.proven() && turnout.truest(), about);
            Set<Requirement> named = new HashSet<>();
            int lacking = 0;
            for (Reason reason : turnout.reasons()) {
                Reason.Block block = assertInstanceOf(Reason.Block.class, reason, about);
                block.needs().forEach(need -> assertTrue(named.add(need), about));
                assertEquals(block.needs().stream().mapToInt(Requirement::count).sum(), block.needed(), about);
                assertEquals(there(of, asked, block), block.there(), about);
                assertTrue(block.lacking() > 0, about);
                lacking += block.lacking();
            }
            assertEquals(turnout.needed() - turnout.filled(), lacking, about);
            assertEquals(greatestDeficiency(of), lacking, about);
            twoBlocks += turnout.reasons().size() > 1 ? 1 : 0;
        }
        assertTrue(twoBlocks > CASES / 20, "more than one block: " + twoBlocks);
    }

    @Test
    void theSameInAnyOrderOfTheNeeds() {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            Case of = new Case(random, true, 6);
            Depot depot = of.depot();
            List<Requirement> asked = of.asked();
            List<Requirement> turned = new ArrayList<>(asked);
            Collections.reverse(turned);
            Turnout one = depot.turnout(asked, CancelToken.NEVER);
            Turnout other = depot.turnout(turned, CancelToken.NEVER);
            assertEquals(one.filled(), other.filled());
            assertEquals(named(one), named(other));
        }
    }

    private static Set<Set<Requirement>> named(Turnout turnout) {
        Set<Set<Requirement>> named = new HashSet<>();
        turnout.reasons().forEach(reason -> named.add(Set.copyOf(reason.needs())));
        return named;
    }

    /** All that may stand for any need of the block, counted afresh. */
    private static int there(Case of, List<Requirement> asked, Reason.Block block) {
        int there = 0;
        for (int t = 0; t < of.types; t++) {
            int type = t;
            boolean may = block.needs().stream().anyMatch(need -> of.truth(type, asked.indexOf(need)) < 3);
            there += may ? of.built[t] : 0;
        }
        return there;
    }

    private static int greatestFlow(Case of) {
        SimpleDirectedWeightedGraph<String, DefaultWeightedEdge> graph =
                new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
        graph.addVertex("source");
        graph.addVertex("sink");
        for (int t = 0; t < of.types; t++) {
            graph.addVertex("type" + t);
            graph.setEdgeWeight(graph.addEdge("source", "type" + t), of.built[t]);
        }
        for (int n = 0; n < of.needs.size(); n++) {
            graph.addVertex("need" + n);
            graph.setEdgeWeight(graph.addEdge("need" + n, "sink"), of.needs.get(n).count());
            for (int t = 0; t < of.types; t++) {
                if (of.truth(t, n) < 3) {
                    graph.setEdgeWeight(graph.addEdge("type" + t, "need" + n), 1000);
                }
            }
        }
        return (int) Math.round(new PushRelabelMFImpl<>(graph).getMaximumFlowValue("source", "sink"));
    }

    /** Over all sets of needs: what they ask for less what may stand for any of them. */
    private static int greatestDeficiency(Case of) {
        int greatest = 0;
        for (int set = 0; set < 1 << of.needs.size(); set++) {
            int deficiency = 0;
            for (int t = 0; t < of.types; t++) {
                boolean may = false;
                for (int n = 0; n < of.needs.size(); n++) {
                    may |= (set >> n & 1) == 1 && of.truth(t, n) < 3;
                }
                deficiency -= may ? of.built[t] : 0;
            }
            for (int n = 0; n < of.needs.size(); n++) {
                deficiency += (set >> n & 1) == 1 ? of.needs.get(n).count() : 0;
            }
            greatest = Math.max(greatest, deficiency);
        }
        return greatest;
    }
}
