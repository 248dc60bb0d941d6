package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.AddUnit;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.rules.Measure;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BeforeView;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.KeepView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.TakingView;
import org.cantonment.rules.view.UnitView;

/** The changes of which at least one is needed to be rid of a finding about a limit. */
final class LimitBranches {

    private static final int HUNDRED = 100;

    private final Scene scene;
    private final Places places;
    private final UnitBranches units;

    LimitBranches(Scene scene, Places places, UnitBranches units) {
        this.scene = scene;
        this.places = places;
        this.units = units;
    }

    /** Null if no line of a limit is behind the finding. */
    List<Edit> of(Finding finding) {
        LimitLine line = line(finding.rule());
        if (line instanceof BoundView bound) {
            return finding.code().equals("limit.at-most") ? less(bound) : more(bound);
        }
        if (line instanceof TakingView taking) {
            return taking(taking, finding);
        }
        if (line instanceof KeepView) {
            return keep(finding);
        }
        if (line instanceof BeforeView before) {
            List<Edit> edits = removals(before.then());
            edits.addAll(places.add(before.first(), 0));
            return edits;
        }
        return null;
    }

    private LimitLine line(Optional<Id> rule) {
        for (LimitView limit : scene.now().limits()) {
            for (LimitLine line : limit.lines()) {
                if (rule.isPresent() && line.id().equals(rule.get())) {
                    return line;
                }
            }
        }
        return null;
    }

    private List<Edit> removals(Selector of) {
        List<Edit> edits = new ArrayList<>();
        for (Node node : scene.nodes()) {
            if (meant(of, node)) {
                edits.addAll(scene.remove(node, false));
            }
        }
        return edits;
    }

    /** Whether the node, or a formation that it stands in, is meant. */
    private boolean meant(Selector of, Node node) {
        for (Node at = node; at != null; at = at.parent() < 0 ? null : scene.nodes().get(at.parent())) {
            if (Muster.share(of, at) > 0 || of.hasSupports() && at.support()) {
                return true;
            }
        }
        return false;
    }

    private List<Edit> less(BoundView bound) {
        List<Edit> edits = removals(bound.of());
        if (bound.bound().measure() == Measure.COUNT) {
            if (!bound.per().empty()) {
                edits.addAll(places.add(bound.per(), 0));
            }
            return edits;
        }
        for (Node node : scene.nodes()) {
            if (node.unit() != null && meant(bound.of(), node)) {
                units.lower(node, edits);
            }
        }
        if (bound.bound().measure() == Measure.PERCENT_OF_USED) {
            others(bound, edits);
        }
        return edits;
    }

    /** A share of the points used also falls when something else is added or strengthened. */
    private void others(BoundView bound, List<Edit> edits) {
        long wanted = wanted(bound);
        for (Choice choice : scene.now().choices()) {
            if (!bound.of().takes(choice.index())) {
                int strength = choice instanceof UnitView unit ? unit.strengthWorth(wanted) : 0;
                edits.addAll(places.add(choice, strength));
            }
        }
        for (Node node : scene.nodes()) {
            if (node.step() != null && !meant(bound.of(), node)) {
                edits.addAll(stronger(node, wanted));
            }
        }
    }

    private List<Edit> stronger(Node node, long wanted) {
        List<Edit> edits = new ArrayList<>();
        long now = node.step().points(node.strength());
        for (int strength : Scene.strengths(node.unit())) {
            if (node.unit().points(strength) > now) {
                edits.addAll(scene.strength(node, strength));
            }
        }
        int enough = node.unit().strengthWorth(now + wanted);
        if (enough > node.strength()) {
            edits.addAll(scene.strength(node, enough));
        }
        return edits;
    }

    /** Points of other things that would bring a share of all points used down to what is allowed. */
    private long wanted(BoundView bound) {
        int percent = Math.max(1, bound.bound().span().max());
        long excess = scene.muster().points(bound.of()) * HUNDRED - scene.muster().tally().points() * percent;
        return Math.max(1, (excess + percent - 1) / percent);
    }

    private List<Edit> more(BoundView bound) {
        List<Edit> edits = new ArrayList<>(places.add(bound.of(), 0));
        if (!bound.per().empty()) {
            edits.addAll(removals(bound.per()));
        }
        for (Node node : scene.nodes()) {
            if (node.formation() != null) {
                edits.addAll(scene.remove(node, false));
            } else if (bound.bound().measure() != Measure.COUNT && node.step() != null) {
                boolean meant = meant(bound.of(), node);
                edits.addAll(meant ? stronger(node, 1) : List.of());
                if (!meant && bound.bound().measure() == Measure.PERCENT_OF_USED) {
                    edits.addAll(scene.remove(node, false));
                    units.lower(node, edits);
                }
            }
        }
        return edits;
    }

    private List<Edit> taking(TakingView view, Finding finding) {
        List<Edit> edits = removals(view.subjects());
        if (finding.code().equals("taking.needs") || finding.code().equals("taking.matches")) {
            edits.addAll(places.add(view.objects(), 0));
        }
        if (!finding.code().equals("taking.joins")) {
            edits.addAll(removals(view.objects()));
        }
        if (finding.code().equals("taking.matches")) {
            for (Node node : scene.nodes()) {
                if (node.unit() != null && (meant(view.subjects(), node) || meant(view.objects(), node))) {
                    Scene.strengths(node.unit()).forEach(strength -> edits.addAll(scene.strength(node, strength)));
                }
            }
        }
        return edits;
    }

    private List<Edit> keep(Finding finding) {
        List<Edit> edits = new ArrayList<>();
        for (Mend mend : finding.mends()) {
            for (Action action : mend.actions()) {
                if (action instanceof AddUnit add && scene.now().choice(add.unit()) != null) {
                    edits.addAll(places.add(scene.now().choice(add.unit()), 0));
                }
            }
        }
        return edits;
    }
}
