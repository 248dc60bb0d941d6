package org.cantonment.buying.growth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.buying.growth.Draft.Load;
import org.cantonment.buying.growth.Draft.Side;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.muster.Billeting;
import org.cantonment.rules.muster.Layout;
import org.cantonment.rules.muster.Muster;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.muster.Supporting;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Ruling;
import org.cantonment.rules.view.UnitView;

/**
 * A list as a draft under other rules: units that are gone make room for those that took their place, or for nobody, and who
 * finds no place any more is left out.
 */
final class Recast {

    private final Layout layout;
    private final Map<Integer, Billeting> billetings = new HashMap<>();
    private final List<Troop> troops = new ArrayList<>();

    private Recast(Ruling ruling, ForceList list, CancelToken cancel) {
        Body body = new Body(renewed(list.body().entries(), ruling), renewed(list.body().supports(), ruling));
        layout = Layout.of(Muster.of(ruling, list.id(), body), cancel);
        layout.billetings().forEach(one -> billetings.put(one.formation().index(), one));
    }

    static Draft of(ForceList list, Ruling ruling, CancelToken cancel) {
        return new Recast(ruling, list, cancel).draft();
    }

    private static List<Entry> renewed(List<Entry> entries, Ruling ruling) {
        List<Entry> now = new ArrayList<>();
        for (Entry entry : entries) {
            if (ruling.choice(entry.what()) instanceof UnitView unit) {
                renewed(entry, unit, ruling).ifPresent(taking -> now.add(taking.entry(entry.id(), entry.count())));
            } else if (ruling.choice(entry.what()) instanceof FormationView formation && formation.permission().allowed()) {
                List<Entry> inner = new ArrayList<>(renewed(entry.body().entries(), ruling));
                now.add(new Entry(entry.id(), Optional.empty(), entry.count(), entry.what(), entry.strength(), List.of(),
                        Optional.empty(), "", Optional.empty(), new Body(inner, List.of()), List.of()));
            }
        }
        return now;
    }

    private static Optional<Taking> renewed(Entry entry, UnitView unit, Ruling ruling) {
        Optional<UnitView> now = unit.permission().allowed() ? Optional.of(unit)
                : unit.successor().map(next -> ruling.choice(next.unit())).filter(UnitView.class::isInstance)
                        .map(UnitView.class::cast).filter(next -> next.permission().allowed());
        Map<String, Integer> options = new HashMap<>();
        entry.options().forEach(taken -> options.merge(taken.option(), taken.count(), Integer::sum));
        return now.map(one -> {
            int strength = entry.strength().orElseGet(unit::leastStrength);
            return one == unit && one.step(strength) != null && one.options().keySet().containsAll(options.keySet())
                    ? new Taking(one, strength, options) : Taking.of(one, one.nearestStrength(strength));
        });
    }

    private Draft draft() {
        for (Node node : layout.muster().nodes()) {
            if (node.parent() < 0 && node.formation() != null) {
                for (int copy = 0; copy < node.count(); copy++) {
                    troop(node, -1);
                }
            }
        }
        List<Side> sides = new ArrayList<>();
        Supporting supporting = layout.supporting();
        for (int i = 0; i < supporting.children().size(); i++) {
            for (int support = 0; support < supporting.groups().length; support++) {
                for (int copy = 0; copy < supporting.placement().where()[i][support]; copy++) {
                    sides.add(new Side(support, supporting.placement().bays()[support], taking(supporting.children().get(i))));
                }
            }
        }
        return new Draft(List.copyOf(troops), sides, new Load(0, 0, 0, 0, new long[0]), new int[0]);
    }

    /** One copy of a formation, and behind it those that stand in it. */
    private void troop(Node node, int parent) {
        Billeting billeting = billetings.get(node.index());
        Troop troop = Troop.empty(node.formation(), parent);
        int at = troops.size();
        troops.add(troop);
        for (int i = 0; i < billeting.children().size(); i++) {
            Node child = billeting.children().get(i);
            for (int billet = 0; billet < troop.fills().size(); billet++) {
                for (int copy = 0; copy < billeting.placement().where()[i][billet]; copy++) {
                    troop = troop.plus(billet, billeting.placement().bays()[billet], child.unit() == null ? null : taking(child));
                    if (child.unit() == null) {
                        troop(child, at);
                    }
                }
            }
        }
        troops.set(at, troop);
    }

    private static Taking taking(Node node) {
        Map<String, Integer> options = new HashMap<>();
        node.entry().options().forEach(taken -> options.merge(taken.option(), taken.count(), Integer::sum));
        return new Taking(node.unit(), node.strength(), options);
    }
}
