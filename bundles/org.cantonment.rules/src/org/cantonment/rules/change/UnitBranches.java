package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.domain.finding.Action;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.SetOption;
import org.cantonment.domain.force.Taken;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.SupportView;

/** The changes of which at least one is needed to be rid of a finding about a unit, a billet or the points. */
final class UnitBranches {

    private final Scene scene;
    private final Places places;

    UnitBranches(Scene scene, Places places) {
        this.scene = scene;
        this.places = places;
    }

    /** Null if the finding is not of this family; empty if nothing here can mend it, as in a contingent. */
    List<Edit> of(Finding finding) {
        String code = finding.code();
        Node node = scene.node(finding.at());
        if (node == null && !code.equals("points.over") && !code.startsWith("support.")) {
            return code.startsWith("limit.") || code.startsWith("taking.") || code.startsWith("keep.")
                    || code.startsWith("before.") ? null : List.of();
        }
        if (code.startsWith("era.") || code.startsWith("unit.") || code.equals("count.too-large")) {
            List<Edit> edits = new ArrayList<>(scene.remove(node, true));
            edits.addAll(scene.succeed(node));
            return edits;
        }
        if (code.equals("strength.not-offered")) {
            List<Edit> edits = new ArrayList<>(scene.remove(node, false));
            Scene.strengths(node.unit()).forEach(strength -> edits.addAll(scene.strength(node, strength)));
            return edits;
        }
        if (code.startsWith("option.")) {
            return option(node, finding);
        }
        if (code.equals("points.over")) {
            return points(finding);
        }
        if (code.startsWith("billet.")) {
            return billet(node, finding);
        }
        return code.startsWith("support.") ? support(node, finding) : null;
    }

    private List<Edit> option(Node node, Finding finding) {
        List<Edit> edits = new ArrayList<>(scene.remove(node, false));
        for (Mend mend : finding.mends()) {
            for (Action action : mend.actions()) {
                if (action instanceof SetOption set) {
                    edits.addAll(scene.option(node, set.option(), set.count()));
                }
            }
        }
        return edits;
    }

    private List<Edit> points(Finding finding) {
        List<Edit> edits = new ArrayList<>();
        for (Node node : scene.nodes()) {
            if (node.unit() != null && node.points() > 0) {
                edits.addAll(scene.remove(node, false));
                lower(node, edits);
            } else if (node.formation() != null && Scene.own(node)) {
                edits.addAll(scene.remove(node, false));
            }
        }
        return edits;
    }

    /** Takes less of a unit: lower strengths, fewer options. */
    void lower(Node node, List<Edit> edits) {
        if (node.step() != null && Scene.own(node)) {
            for (int strength : Scene.strengths(node.unit())) {
                if (node.unit().points(strength) < node.step().points(node.strength())) {
                    edits.addAll(scene.strength(node, strength));
                }
            }
            Step step = node.step();
            if (step.from() < node.strength()) {
                edits.addAll(scene.strength(node, node.strength() - 1));
            }
        }
        for (Taken taken : node.entry().options()) {
            if (taken.count() > 0) {
                edits.addAll(scene.option(node, taken.option(), taken.count() - 1));
            }
        }
    }

    private List<Edit> billet(Node node, Finding finding) {
        if (finding.code().equals("billet.empty") || finding.code().equals("billet.short")) {
            List<Edit> edits = new ArrayList<>(scene.remove(node, false));
            for (BilletView billet : node.formation().billets()) {
                if (finding.rule().filter(billet.rule()::equals).isPresent()) {
                    edits.addAll(places.fill(node, billet));
                }
            }
            return edits;
        }
        Node formation = scene.nodes().get(node.parent());
        List<Edit> edits = new ArrayList<>(scene.remove(formation, false));
        for (int i = formation.index() + 1; i < formation.end(); i = scene.nodes().get(i).end()) {
            edits.addAll(scene.remove(scene.nodes().get(i), false));
        }
        return edits;
    }

    private List<Edit> support(Node node, Finding finding) {
        List<Edit> edits = new ArrayList<>();
        for (Node other : scene.nodes()) {
            if (other.choice() != null && (other.support() || other.parent() < 0)) {
                edits.addAll(scene.remove(other, false));
            }
        }
        if (node == null || finding.code().equals("support.short")) {
            for (SupportView support : scene.now().supports()) {
                if (finding.rule().filter(support.rule()::equals).isPresent()) {
                    edits.addAll(places.support(support));
                }
            }
        } else {
            scene.now().supports().stream().filter(support -> !support.per().empty())
                    .forEach(support -> edits.addAll(places.add(support.per(), 0)));
        }
        return edits;
    }
}
