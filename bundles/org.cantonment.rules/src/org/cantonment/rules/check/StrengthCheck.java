package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import org.cantonment.domain.finding.Mend;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/** Strengths that a unit is not offered at. */
public final class StrengthCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        for (Node node : about.muster().nodes()) {
            if (node.unit() != null && node.step() == null) {
                report(node, sink);
            }
        }
    }

    private static void report(Node node, Sink sink) {
        UnitView unit = node.unit();
        List<String> offered = new ArrayList<>();
        TreeSet<Integer> near = new TreeSet<>();
        List<Step> steps = new ArrayList<>(unit.steps());
        steps.sort((a, b) -> Integer.compare(a.from(), b.from()));
        for (Step step : steps) {
            offered.add(step.words());
            near.add(Math.max(step.from(), Math.min(step.to(), node.strength())));
        }
        int nearest = unit.nearestStrength(node.strength());
        List<Mend> mends = new ArrayList<>();
        mends.add(Mends.strength(node, nearest));
        near.remove(nearest);
        near.forEach(strength -> mends.add(Mends.strength(node, strength)));
        sink.breach(unit.id(), unit.id(), "strength.not-offered", node.entry().id(),
                Optional.of(unit.step(nearest).rule()), "No strength " + node.strength() + " for " + unit.title()
                        + ", only " + String.join(", ", offered) + "; counted as " + nearest + '.', mends);
    }
}
