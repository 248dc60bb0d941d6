package org.cantonment.references.turnout;

import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/** The greatest flow of a parade by JGraphT: its push-relabel. */
public final class ParadeFlow {
    private static final int SOURCE = -1;
    private static final int SINK = -2;
    private final SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph =
            new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);

    /** Makes the graph. */
    public ParadeFlow(Parade parade) {
        graph.addVertex(SOURCE);
        graph.addVertex(SINK);
        int types = parade.there().length;
        for (int t = 0; t < types; t++) {
            graph.addVertex(t);
            graph.setEdgeWeight(graph.addEdge(SOURCE, t), parade.there()[t]);
        }
        for (int n = 0; n < parade.arcs().length; n++) {
            graph.addVertex(types + n);
            int count = parade.needs().get(n).count();
            graph.setEdgeWeight(graph.addEdge(types + n, SINK), count);
            for (int t : parade.arcs()[n]) {
                graph.setEdgeWeight(graph.addEdge(t, types + n), count);
            }
        }
    }

    /** How many places can be filled. */
    public int filled() {
        return (int) Math.round(new PushRelabelMFImpl<>(graph).getMaximumFlowValue(SOURCE, SINK));
    }
}
