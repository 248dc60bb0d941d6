package org.cantonment.stock.tests;

import static org.cantonment.stock.tests.Things.id;
import static org.cantonment.stock.tests.Things.need;
import static org.cantonment.stock.tests.Weeks.player;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.Level;
import org.cantonment.stock.Catalogue;
import org.cantonment.stock.likeness.Allowance;
import org.cantonment.stock.likeness.Terms;
import org.cantonment.stock.session.Evening;
import org.cantonment.stock.session.Gap;
import org.cantonment.stock.session.Lender;
import org.cantonment.stock.session.Lending;
import org.cantonment.stock.session.Seat;
import org.cantonment.stock.supply.Supply;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;

/**
 * Evenings drawn from a fixed seed. Outside checks: the greatest flow by JGraphT (push-relabel), and the theorem of Hall in
 * the form with deficiencies: each gap is what its needs ask for, less everything of everybody that may stand for any of them.
 */
class EveningFlowTest {

    private static final int EVENINGS = 300;
    private static final int TYPES = 6;

    private final int[] there = new int[TYPES];
    private final List<Seat> seats = new ArrayList<>();
    private final List<Lender> lenders = new ArrayList<>();
    private int[] standsFor;

    @Test
    void asManyStandAsTheGreatestFlowSaysAndGapsAddUp() {
        Random random = new Random(1735);
        int gaps = 0;
        for (int i = 0; i < EVENINGS; i++) {
            Catalogue catalogue = draw(random);
            Evening evening = Lending.of(catalogue, seats, lenders, CancelToken.NEVER);
            String about = "evening " + i;
            assertEquals(greatestFlow(), evening.filled(), about);
            assertTrue(evening.proven(), about);
            Set<Requirement> named = new HashSet<>();
            for (Gap gap : evening.gaps()) {
                List<Requirement> needs = gap.needs().values().stream().flatMap(List::stream).toList();
                needs.forEach(need -> assertTrue(named.add(need), about));
                assertEquals(needs.stream().mapToInt(Requirement::count).sum(), gap.needed(), about);
                assertEquals(supply(needs), gap.there(), about);
            }
            assertEquals(evening.lacking(), evening.gaps().stream().mapToInt(Gap::lacking).sum(), about);
            gaps += evening.gaps().size();
        }
        assertTrue(gaps > EVENINGS / 2, "gaps: " + gaps);
    }

    /** Types 0 to 2 are kindred; each of the others may stand for one type more. */
    private Catalogue draw(Random random) {
        Things things = new Things().family("Kin", null);
        for (int t = 0; t < TYPES; t++) {
            things.piece("T" + t, t < 3 ? "Kin" : null);
            there[t] = 0;
        }
        standsFor = new int[] {-1, -1, -1, random.nextInt(TYPES), random.nextInt(TYPES), random.nextInt(TYPES)};
        Catalogue catalogue = things.catalogue();
        Allowance allowance = Allowance.of(catalogue, List.of(Things.card(Things.allows(Level.KINDRED),
                Things.lets("T3", "T" + standsFor[3]), Things.lets("T4", "T" + standsFor[4]),
                Things.lets("T5", "T" + standsFor[5]))), Optional.empty(), Terms.ANY);
        seats.clear();
        lenders.clear();
        int players = 2 + random.nextInt(4);
        for (int p = 0; p < players; p++) {
            Map<Id, Integer> has = new TreeMap<>();
            for (int t = 0; t < TYPES; t++) {
                int count = random.nextInt(3);
                has.put(id("T" + t), count);
                there[t] += count;
            }
            lenders.add(new Lender(player("P" + p), Supply.pieces(has)));
            if (p == 0 || random.nextInt(4) > 0) {
                List<Requirement> needs = new ArrayList<>();
                for (int n = 0; n < 1 + random.nextInt(4); n++) {
                    needs.add(need("P" + p + "-" + n, 1 + random.nextInt(4), "T" + random.nextInt(TYPES)));
                }
                seats.add(new Seat(player("P" + p), Id.of("L" + p), needs, allowance));
            }
        }
        return catalogue;
    }

    private boolean may(int type, Requirement need) {
        int wanted = Integer.parseInt(need.anyOf().get(0).name().substring(1));
        return type == wanted || type < 3 && wanted < 3 || standsFor[type] == wanted;
    }

    private int supply(List<Requirement> needs) {
        int supply = 0;
        for (int t = 0; t < TYPES; t++) {
            int type = t;
            supply += needs.stream().anyMatch(need -> may(type, need)) ? there[t] : 0;
        }
        return supply;
    }

    private int greatestFlow() {
        SimpleDirectedWeightedGraph<String, DefaultWeightedEdge> graph =
                new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
        graph.addVertex("source");
        graph.addVertex("sink");
        for (int t = 0; t < TYPES; t++) {
            graph.addVertex("type" + t);
            graph.setEdgeWeight(graph.addEdge("source", "type" + t), there[t]);
        }
        for (Seat seat : seats) {
            for (Requirement need : seat.needs()) {
                String vertex = need.entry().text();
                graph.addVertex(vertex);
                graph.setEdgeWeight(graph.addEdge(vertex, "sink"), need.count());
                for (int t = 0; t < TYPES; t++) {
                    if (may(t, need)) {
                        graph.setEdgeWeight(graph.addEdge("type" + t, vertex), need.count());
                    }
                }
            }
        }
        return (int) Math.round(new PushRelabelMFImpl<>(graph).getMaximumFlowValue("source", "sink"));
    }
}
