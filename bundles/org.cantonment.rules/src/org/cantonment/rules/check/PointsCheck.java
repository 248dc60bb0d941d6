package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.muster.Unpriced;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/** The limit of points of the round, or of a contingent. */
public final class PointsCheck implements Check {

    private static final int MOST_MENDS = 3;

    /** A mend and the points that it moves. */
    private record Saving(Mend mend, long points, int parent) {
    }

    @Override
    public void check(Case about, Sink sink) {
        if (about.muster().tally().unpriced()) {
            sink.add(about.place(), about.place(), Finding.of("points.unpriced", Severity.NOTE, about.place(),
                    "Some unit of this list has no price in its rules and counts as 0 points."));
        }
        for (Unpriced unpriced : about.muster().unpriced()) {
            Node node = unpriced.node();
            sink.add(node.choice().id(), node.choice().id(), new Finding("price.unknown", Severity.CAUTION,
                    node.entry().id(), Optional.of(unpriced.line().id()), node.choice().title() + " ("
                            + unpriced.line().book() + "): what it costs '" + unpriced.line().words()
                            + "' was not added: " + unpriced.why().words() + '.', List.of()));
        }
        long over = -about.room();
        if (over <= 0 || over <= outOfEra(about, sink)) {
            return;
        }
        long used = about.contingent() ? about.usedHere() : about.used();
        int limit = about.points().orElseThrow();
        Optional<Id> rule = about.contingent() ? Optional.of(about.place()) : about.situation().pointsRule();
        Id card = rule.map(Id::card).orElse(about.place());
        sink.addOfLimit(card, new Finding(about.contingent() ? "points.contingent-over" : "points.over", Severity.BREACH,
                about.place(), rule, "The " + (about.contingent() ? "contingent" : "list") + " uses "
                        + Words.points(used) + " of " + limit + ": " + over + " too many.", sink.mends(() -> mends(about, over))));
    }

    /** Points of units that this era does not have: they must go in any case, so they alone are no excess. */
    private static long outOfEra(Case about, Sink sink) {
        long points = 0;
        for (Node node : about.muster().nodes()) {
            if (node.choice() != null && node.choice().permission().outOfEra()
                    && !sink.excused(node.choice().id(), node.choice().id())) {
                points += node.points();
            }
        }
        return points;
    }

    private static List<Mend> mends(Case about, long over) {
        List<Saving> savings = new ArrayList<>();
        for (Node node : about.muster().nodes()) {
            long copies = node.count() == 0 ? 0 : node.copies() / node.count();
            if (node.unit() == null || node.points() <= 0 || copies == 0) {
                continue;
            }
            long each = node.points() / node.copies();
            long needed = each == 0 ? Long.MAX_VALUE : (over + each * copies - 1) / (each * copies);
            if (needed <= node.count()) {
                savings.add(new Saving(Mends.take(node, (int) needed), needed * copies * each, node.parent()));
            }
            if (node.step() != null) {
                lowerStrength(node, over, savings);
            }
        }
        savings.sort(Comparator.comparingLong(Saving::points));
        Map<String, Mend> unlike = new LinkedHashMap<>();
        for (Saving saving : savings) {
            unlike.put(saving.parent() + saving.mend().label(), saving.mend());
        }
        List<Mend> mends = new ArrayList<>(unlike.values().stream().limit(MOST_MENDS).toList());
        if (mends.isEmpty()) {
            mends.add(Mend.advice("Take out at least " + Words.points(over) + '.'));
        }
        return mends;
    }

    private static void lowerStrength(Node node, long over, List<Saving> savings) {
        UnitView unit = node.unit();
        long now = unit.points(node.strength());
        int best = -1;
        for (Step step : unit.steps()) {
            int strength = step.lastWithin(now - (over + node.copies() - 1) / node.copies());
            if (strength < node.strength() && strength > best && unit.step(strength) == step) {
                best = strength;
            }
        }
        if (best > 0) {
            savings.add(new Saving(Mends.strength(node, best), (now - unit.points(best)) * node.copies(),
                    node.parent()));
        }
    }
}
