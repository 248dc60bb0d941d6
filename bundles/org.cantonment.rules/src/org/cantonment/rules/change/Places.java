package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Selector;
import org.cantonment.rules.view.SupportView;

/** Where in a list something could be added so that a billet or support might take it. */
final class Places {

    private final Scene scene;

    Places(Scene scene) {
        this.scene = scene;
    }

    /** Adds one of any of these, wherever it might stand. */
    List<Edit> add(Selector of, int strength) {
        List<Edit> edits = new ArrayList<>();
        for (int i = of.nextChoice(0); i >= 0; i = of.nextChoice(i + 1)) {
            edits.addAll(add(scene.now().choices().get(i), strength));
        }
        return edits;
    }

    /** Adds one of a choice, wherever it might stand. */
    List<Edit> add(Choice choice, int strength) {
        List<Edit> edits = new ArrayList<>();
        for (Node node : scene.nodes()) {
            if (node.formation() != null && takes(node.formation(), choice)) {
                edits.addAll(scene.add(node.entry().id(), false, choice, strength));
            }
        }
        if (!scene.now().hasFormations() || choice instanceof FormationView) {
            edits.addAll(scene.add(scene.list(), false, choice, strength));
        } else if (supported(choice)) {
            edits.addAll(scene.add(scene.list(), true, choice, strength));
        }
        return edits;
    }

    /** Adds one of those that a billet of a formation takes. */
    List<Edit> fill(Node formation, BilletView billet) {
        List<Edit> edits = new ArrayList<>();
        for (Room room : billet.rooms()) {
            for (int i = room.of().nextChoice(0); i >= 0; i = room.of().nextChoice(i + 1)) {
                edits.addAll(scene.add(formation.entry().id(), false, scene.now().choices().get(i), 0));
            }
        }
        return edits;
    }

    /** Adds one of those that a support takes. */
    List<Edit> support(SupportView support) {
        List<Edit> edits = new ArrayList<>();
        for (Room room : support.rooms()) {
            for (int i = room.of().nextChoice(0); i >= 0; i = room.of().nextChoice(i + 1)) {
                edits.addAll(scene.add(scene.list(), true, scene.now().choices().get(i), 0));
            }
        }
        return edits;
    }

    static boolean takes(FormationView formation, Choice choice) {
        for (BilletView billet : formation.billets()) {
            for (Room room : billet.rooms()) {
                if (room.of().takes(choice.index())) {
                    return true;
                }
            }
        }
        return false;
    }

    boolean supported(Choice choice) {
        for (SupportView support : scene.now().supports()) {
            for (Room room : support.rooms()) {
                if (room.of().takes(choice.index())) {
                    return true;
                }
            }
        }
        return false;
    }
}
