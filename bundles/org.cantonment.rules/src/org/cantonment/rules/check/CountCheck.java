package org.cantonment.rules.check;

import java.util.List;
import java.util.Optional;

import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;

/** Counts that no table could hold. */
public final class CountCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        for (Node node : about.muster().nodes()) {
            long above = node.parent() < 0 ? 1 : about.muster().nodes().get(node.parent()).copies();
            long wanted = above * Math.max(0L, node.entry().count());
            if (wanted > Muster.MOST && node.choice() != null) {
                sink.breach(node.choice().id(), node.choice().id(), "count.too-large", node.entry().id(),
                        Optional.empty(), "A list holds at most " + Muster.MOST + " of anything; this would be " + wanted
                                + " of " + node.choice().title() + '.', List.of());
            }
        }
    }
}
