package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Mend;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Permission;
import org.cantonment.rules.view.UnitView;

/** Units and formations that may not be taken in this era, at this time, or by this side. */
public final class PermissionCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        for (Node node : about.muster().nodes()) {
            if (node.choice() != null) {
                era(about, node, sink);
                side(about, node, sink);
            }
        }
    }

    private static void era(Case about, Node node, Sink sink) {
        Permission permission = node.choice().permission();
        if (permission.allowed()) {
            return;
        }
        List<Mend> mends = new ArrayList<>();
        if (permission.successor().isPresent() && node.unit() != null
                && about.ruling().choice(permission.successor().get()) instanceof UnitView successor
                && about.mayTake(successor)) {
            mends.add(Mends.replace(node, successor));
        }
        mends.add(Mends.take(node, node.count()));
        Id id = node.choice().id();
        sink.breach(id, id, permission.code(), node.entry().id(), permission.rule(),
                Words.entry(node) + ": " + permission.reason() + '.', mends);
    }

    private static void side(Case about, Node node, Sink sink) {
        Choice choice = node.choice();
        Optional<Id> side = about.situation().side();
        if (side.isEmpty() || choice.sides().isEmpty() || choice.sides().contains(side.get())) {
            return;
        }
        List<String> sides = choice.sides().stream().sorted().map(about.ruling()::title).toList();
        sink.breach(choice.id(), choice.id(), "unit.wrong-side", node.entry().id(), Optional.of(choice.id()),
                choice.title() + ": only for " + Words.and(sides) + ", and this list is for "
                        + about.ruling().title(side.get()) + '.', List.of(Mends.take(node, node.count())));
    }
}
