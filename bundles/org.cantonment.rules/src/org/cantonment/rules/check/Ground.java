package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Reckoning;
import org.cantonment.domain.rules.Scope;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Selector;

/** One stretch that a limit counts over: the list, a contingent, the campaign, or one formation of the list. */
final class Ground {

    private final Case about;
    private final Reckoning reckoning;
    private final Node formation;

    private Ground(Case about, Reckoning reckoning, Node formation) {
        this.about = about;
        this.reckoning = reckoning;
        this.formation = formation;
    }

    /** Hands over every stretch of a scope. */
    static void each(Case about, Scope scope, Consumer<Ground> to) {
        boolean any = scope.reckoning() == Reckoning.EACH_FORMATION;
        if (!any && scope.reckoning() != Reckoning.EACH_OF) {
            to.accept(new Ground(about, scope.reckoning(), null));
            return;
        }
        for (Node node : about.muster().formations()) {
            if (node.copies() > 0 && (any || node.formation().id().equals(scope.formation().orElse(null)))) {
                to.accept(new Ground(about, scope.reckoning(), node));
            }
        }
    }

    /** The place to point at. */
    Id place() {
        return formation == null ? about.place() : formation.entry().id();
    }

    /** The formation's node, or null. */
    Node formation() {
        return formation;
    }

    /** "the list has", for the sentence; of a formation, whose name may be a plural, "in The flags:". */
    String has() {
        if (formation != null) {
            return "in " + Words.entry(formation) + ':';
        }
        return switch (reckoning) {
            case CAMPAIGN -> "with this list the campaign has";
            case CONTINGENT -> "the contingent has";
            default -> about.contingent() ? "the contingent has" : "the list has";
        };
    }

    long count(Selector of) {
        if (formation != null) {
            return reckoning == Reckoning.EACH_OF ? about.muster().countIn(of, formation)
                    : about.muster().countDirectlyIn(of, formation);
        }
        long sum = about.muster().count(of);
        if (whole()) {
            for (Muster other : about.others()) {
                for (Node node : other.nodes()) {
                    Choice here = about.ruling().choice(node.entry().what());
                    sum += here != null && of.takes(here.index()) ? node.copies() : 0;
                }
            }
        }
        if (reckoning == Reckoning.CAMPAIGN) {
            for (Map.Entry<Id, Integer> used : about.situation().used().entrySet()) {
                Choice here = about.ruling().choice(used.getKey());
                sum += here != null && of.takes(here.index()) ? used.getValue() : 0;
            }
        }
        return sum;
    }

    /** How many stand here in this list or contingent itself. */
    long countHere(Selector of) {
        return formation != null ? count(of) : about.muster().count(of);
    }

    long points(Selector of) {
        if (formation != null) {
            return reckoning == Reckoning.EACH_OF ? about.muster().pointsIn(of, formation)
                    : about.muster().pointsDirectlyIn(of, formation);
        }
        long sum = about.muster().points(of);
        if (whole()) {
            for (Muster other : about.others()) {
                for (Node node : other.nodes()) {
                    Choice here = about.ruling().choice(node.entry().what());
                    sum += here != null && of.takes(here.index()) ? node.points() : 0;
                }
            }
        }
        return sum;
    }

    /** The points used here in all. */
    long used() {
        if (formation != null) {
            return about.muster().whole(formation) / formation.copies();
        }
        return whole() ? about.used() : about.usedHere();
    }

    private boolean whole() {
        return reckoning == Reckoning.LIST || reckoning == Reckoning.CAMPAIGN;
    }

    /** The nodes that stand here, in the order of the list. */
    List<Node> nodes() {
        List<Node> all = about.muster().nodes();
        if (formation == null) {
            return all;
        }
        if (reckoning == Reckoning.EACH_OF) {
            return all.subList(formation.index() + 1, formation.end());
        }
        List<Node> direct = new ArrayList<>();
        for (int i = formation.index() + 1; i < formation.end(); i = all.get(i).end()) {
            direct.add(all.get(i));
        }
        return direct;
    }

    /** How many copies of the node stand here. */
    long copies(Node node) {
        return formation == null ? node.copies() : node.copies() / formation.copies();
    }

    /** How many copies of the node stand here and are meant. */
    long share(Selector of, Node node) {
        long share = Muster.share(of, node);
        return formation == null ? share : share / formation.copies();
    }

    /** The points of the node that stand here. */
    long points(Node node) {
        return formation == null ? node.points() : node.points() / formation.copies();
    }
}
