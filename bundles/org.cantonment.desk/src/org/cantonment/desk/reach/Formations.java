package org.cantonment.desk.reach;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cantonment.buying.reach.Formation;
import org.cantonment.buying.reach.Formation.Billet;
import org.cantonment.desk.eras.Units;
import org.cantonment.domain.common.Id;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Ruling;
import org.cantonment.stock.eras.FieldUnit;

/** The formations of a ruling as a shelf sees them, for a player of some sides; no sides are all of them. */
final class Formations {
    private final Ruling ruling;
    private final Set<Id> sides;
    private final List<FieldUnit> units;
    private final List<FormationView> views = new ArrayList<>();
    private final Map<Id, Formation> known = new LinkedHashMap<>();

    Formations(Ruling ruling, Set<Id> sides) {
        this.ruling = ruling;
        this.sides = sides;
        units = Units.of(ruling).stream().filter(unit -> serves(ruling.choice(unit.unit()))).toList();
        for (Choice choice : ruling.choices()) {
            if (choice instanceof FormationView view && view.permission().allowed() && serves(view)) {
                views.add(view);
            }
        }
        views.forEach(view -> known.put(view.id(), new Formation(view.id(), view.billets().stream().map(this::billet)
                .toList())));
    }

    /** Those that may be taken now, in the order of the books. */
    List<FormationView> views() {
        return views;
    }

    /** The same with the units that may stand in them. */
    Map<Id, Formation> known() {
        return known;
    }

    private boolean serves(Choice choice) {
        return sides.isEmpty() || choice.sides().isEmpty() || choice.sides().stream().anyMatch(sides::contains);
    }

    private Billet billet(BilletView billet) {
        return new Billet(billet.rooms().stream().map(this::room).toList());
    }

    private Formation.Room room(Room room) {
        return new Formation.Room(room.span().min(), room.span().max(),
                units.stream().filter(unit -> room.of().takes(ruling.choice(unit.unit()).index())).toList(),
                views.stream().filter(view -> room.of().takes(view.index())).map(FormationView::id).toList());
    }
}
