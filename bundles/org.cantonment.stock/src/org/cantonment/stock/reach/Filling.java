package org.cantonment.stock.reach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Requirement;
import org.cantonment.stock.eras.FieldUnit;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.eras.Step;
import org.cantonment.stock.turnout.Depot;
import org.cantonment.stock.turnout.Turnout;

/**
 * Fills the billets of a formation, one place after another, with what lacks least: a branch is left where what is taken
 * so far lacks as much as the best filling known. Alike places are filled in one order only.
 */
final class Filling {

    /** So many branches for each turnout of a whole filling. */
    private static final int EACH = 100;

    /** A place to fill; alike is the number of the billet. */
    private record Slot(int alike, List<Choice> choices) {
    }

    private record Choice(FieldUnit unit, Step step) {
    }

    private final Depot depot;
    private final Shape shape;
    private final CancelToken cancel;
    private final int limit;
    private final List<Slot> slots = new ArrayList<>();
    private final int[] chosen;
    private int[] best;
    private Turnout bestTurnout;
    private int branches;
    private boolean cut;

    private Filling(Depot depot, Shape shape, boolean most, int branches, CancelToken cancel) {
        this.depot = depot;
        this.shape = shape;
        this.cancel = cancel;
        limit = branches;
        for (int p = 0; p < shape.places().size(); p++) {
            Places places = shape.places().get(p);
            List<Choice> choices = choices(places, most);
            int count = Math.min(Places.MOST, !most ? places.min() : choices.isEmpty() ? 0 : places.max());
            for (int i = 0; i < count; i++) {
                slots.add(new Slot(p, choices));
            }
        }
        chosen = new int[slots.size()];
    }

    static Optional<Near> of(Depot depot, Shape shape, boolean most, int branches, CancelToken cancel) {
        Filling filling = new Filling(depot, shape, most, branches, cancel);
        if (filling.slots.stream().anyMatch(slot -> slot.choices().isEmpty())) {
            return Optional.empty();
        }
        filling.fill(0, List.of());
        return Optional.of(filling.near());
    }

    /** Those that lack least by themselves first, so that a good filling is found soon. */
    private List<Choice> choices(Places places, boolean most) {
        List<Choice> choices = new ArrayList<>();
        for (FieldUnit unit : places.of()) {
            choices.add(new Choice(unit, unit.steps().get(most ? unit.steps().size() - 1 : 0)));
        }
        choices.sort(Comparator.comparingInt(choice -> depot.leastLacking(needs(choice, 0), cancel)));
        return choices;
    }

    private List<Requirement> needs(Choice choice, int slot) {
        Id entry = shape.formation().child("place-" + (slot + 1));
        return choice.step().needs().stream().map(need -> new Requirement(entry, Optional.of(choice.unit().unit()),
                need.count(), need.anyOf())).toList();
    }

    private void fill(int at, List<Requirement> needs) {
        cancel.check();
        if (bestTurnout != null && (cut || depot.leastLacking(needs, cancel) >= bestTurnout.lacking())) {
            return;
        }
        if (at == slots.size()) {
            Turnout turnout = depot.turnout(needs, EACH, cancel);
            if (bestTurnout == null || turnout.lacking() < bestTurnout.lacking()) {
                bestTurnout = turnout;
                best = chosen.clone();
            }
            return;
        }
        boolean alike = at > 0 && slots.get(at - 1).alike() == slots.get(at).alike();
        List<Choice> choices = slots.get(at).choices();
        for (int c = alike ? chosen[at - 1] : 0; c < choices.size() && !enough(); c++) {
            if (++branches > limit && bestTurnout != null) {
                cut = true;
                return;
            }
            chosen[at] = c;
            List<Requirement> more = new ArrayList<>(needs);
            more.addAll(needs(choices.get(c), at));
            fill(at + 1, more);
        }
    }

    private boolean enough() {
        return bestTurnout != null && bestTurnout.complete();
    }

    private Near near() {
        Map<List<Object>, Fielded> units = new LinkedHashMap<>();
        for (int i = 0; i < best.length; i++) {
            Choice choice = slots.get(i).choices().get(best[i]);
            Step step = choice.step();
            units.merge(List.of(slots.get(i).alike(), choice.unit().unit()),
                    new Fielded(choice.unit().unit(), step.strength(), step.points(), 1),
                    (one, other) -> new Fielded(one.unit(), one.strength(), one.points(), one.count() + other.count()));
        }
        boolean proven = bestTurnout.complete() || !cut && bestTurnout.proven();
        return new Near(List.copyOf(units.values()), bestTurnout, proven);
    }
}
