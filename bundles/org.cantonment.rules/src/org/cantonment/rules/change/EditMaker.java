package org.cantonment.rules.change;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Relation;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BeforeView;
import org.cantonment.rules.view.BoundView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.KeepView;
import org.cantonment.rules.view.LimitLine;
import org.cantonment.rules.view.LimitView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Situation;
import org.cantonment.rules.view.SupportView;
import org.cantonment.rules.view.TakingView;
import org.cantonment.rules.view.UnitView;

/** Makes all that may be done to one part of a list. */
final class EditMaker {

    private final Part part;
    private final Situation situation;
    private final Board.Counter counter;
    private final Prices prices;
    private final Filling filling;
    private final Variants variants;
    private final List<List<Variant>> puttable = new ArrayList<>();
    private final long[] dearest;

    /** @param all the parts of the list: rules of each may ask what stands in others */
    EditMaker(Part part, List<Part> all, Situation situation, boolean owned, Board.Counter counter) {
        this.part = part;
        this.situation = situation;
        this.counter = counter;
        this.prices = new Prices(part);
        this.variants = new Variants(part.now(), telling(all, owned));
        this.filling = new Filling(part.now(), situation, this::least);
        this.dearest = new long[part.now().choices().size()];
        for (Choice choice : part.now().choices()) {
            List<Variant> ways = choice instanceof UnitView unit && filling.mayTake(unit)
                    ? variants.of(unit, Variant::points) : List.of();
            puttable.add(ways);
            for (Variant variant : ways) {
                dearest[choice.index()] = Math.max(dearest[choice.index()],
                        variant.points() + Prices.surcharge(variant.unit()));
            }
        }
    }

    /** What a unit costs at the least, however it is taken. */
    private long least(UnitView unit) {
        return variants.of(unit, Variant::points).stream().mapToLong(Variant::least).min().orElse(0);
    }

    private static Variants.Telling telling(List<Part> all, boolean owned) {
        boolean strengths = false;
        boolean options = false;
        for (Part part : all) {
            strengths |= part.fluid();
            options |= part.fluid();
            for (LimitView limit : part.now().limits()) {
                for (LimitLine line : limit.lines()) {
                    boolean fixed = limit.conditions().isEmpty() && (line instanceof BoundView
                            || line instanceof KeepView || line instanceof BeforeView || line instanceof TakingView);
                    strengths |= !fixed || line instanceof TakingView view && view.taking().relation() == Relation.MATCHES;
                    options |= !fixed;
                }
            }
        }
        return new Variants.Telling(strengths, options, owned);
    }

    Prices prices() {
        return prices;
    }

    Filling filling() {
        return filling;
    }

    Variants variants() {
        return variants;
    }

    /** What may become of one of a group. */
    void fates(Group group, List<Group> all) {
        Node node = group.first();
        if (node.entry().billet().isPresent()) {
            group.fates().add(fate(Kind.UNPIN, group, null, 0, 0, List.of()));
        }
        if (node.formation() != null) {
            removeFormation(group, all);
            return;
        }
        long price = Prices.now(node);
        long weight = node.copies() / node.count();
        Delta gone = gone(node, price, weight);
        group.fates().add(fate(Kind.REMOVE, group, null, prices.old(node), 1, List.of(gone)));
        if (filling.mayTake(node.unit()) || !situation.excuses().isEmpty()) {
            alter(group, price, weight);
        }
        succeed(group, gone, weight);
        group.fates().sort(Comparator.comparingLong(Edit::cost).thenComparingInt(Edit::id));
    }

    private static Delta gone(Node node, long price, long weight) {
        long most = node.unit() == null ? 0 : Prices.surcharge(node.unit());
        long least = Charges.least(node.choice(), price, node.strength());
        return new Delta(node.choice(), -weight, -(price + most) * weight, -least * weight);
    }

    private static Delta come(Variant variant, long weight) {
        UnitView unit = variant.unit();
        return new Delta(unit, weight, variant.least() * weight, (variant.points() + Prices.surcharge(unit)) * weight);
    }

    private Edit fate(Kind kind, Group group, Variant variant, long moved, int units, List<Delta> deltas) {
        long cost = Math.max(0, moved);
        return new Edit(counter.next(), kind, group, null, variant, null, cost, units, Cost.of(cost, units), deltas,
                group.position(0));
    }

    private void alter(Group group, long price, long weight) {
        Node node = group.first();
        Variant is = new Variant(node.unit(), node.strength(), node.entry().options(), price);
        boolean legal = variants.offered(is);
        for (Variant variant : variants.of(node.unit(), some -> prices.altered(node, some))) {
            if (!legal || !variants.alike(is, variant)) {
                long more = (variant.least() - is.least()) * weight;
                group.fates().add(fate(Kind.ALTER, group, variant, prices.altered(node, variant), 1,
                        List.of(new Delta(node.choice(), 0, more, more))));
            }
        }
    }

    private void succeed(Group group, Delta gone, long weight) {
        Node node = group.first();
        Id next = node.unit().permission().successor().orElse(null);
        if (next == null || !(part.now().choice(next) instanceof UnitView unit) || !filling.mayTake(unit)) {
            return;
        }
        for (Variant variant : variants.of(unit, some -> prices.succeeded(node, some.points()))) {
            group.fates().add(fate(Kind.SUCCEED, group, variant, prices.succeededLeast(node, variant),
                    Prices.difference(node) ? 1 : 2, List.of(gone, come(variant, weight))));
        }
    }

    /** One of a formation goes with all that is written in it. */
    private void removeFormation(Group group, List<Group> all) {
        Node node = group.first();
        long moved = Math.max(0, prices.old(node));
        long units = 0;
        List<Delta> deltas = new ArrayList<>(List.of(gone(node, Prices.now(node), node.copies() / node.count())));
        for (Group inside : all) {
            if (inside.within(group)) {
                for (Node some : inside.nodes()) {
                    long each = some.copies() / node.copies();
                    moved += Math.max(0, prices.old(some)) * each;
                    units += some.unit() == null ? 0 : each;
                    deltas.add(gone(some, Prices.now(some), some.copies() / node.count()));
                }
            }
        }
        group.fates().add(fate(Kind.REMOVE, group, null, moved, (int) Math.min(Integer.MAX_VALUE, units), deltas));
    }

    /** What may be put in at a place. */
    void adds(Place place) {
        for (Choice choice : choices(place)) {
            if (choice instanceof FormationView formation) {
                if (filling.cost(choice) < Cost.NEVER) {
                    addFormation(place, formation);
                }
                continue;
            }
            for (Variant variant : puttable.get(choice.index())) {
                long moved = Math.max(0, variant.least());
                place.adds().add(new Edit(counter.next(), Kind.ADD, null, place, variant, null, moved, 1,
                        Cost.of(moved, 1), List.of(come(variant, place.weight())),
                        place.position()));
            }
        }
        place.adds().sort(Comparator.comparingLong(Edit::least).thenComparingInt(Edit::id));
    }

    /** The most points that one of these units costs, however it is taken, with all surcharges; 0 for formations. */
    long dearest(BitSet some) {
        long most = 0;
        for (int i = some.nextSetBit(0); i >= 0; i = some.nextSetBit(i + 1)) {
            most = Math.max(most, dearest[i]);
        }
        return most;
    }

    private void addFormation(Place place, FormationView formation) {
        long least = Charges.least(formation, formation.points(), 0);
        long moved = Math.max(0, least);
        long points = least * place.weight();
        place.adds().add(new Edit(counter.next(), Kind.ADD_FORMATION, null, place, null, formation, moved, 0,
                filling.cost(formation), List.of(new Delta(formation, place.weight(), points, points)),
                place.position()));
    }

    /** Where there are formations, a unit beside them is put under the word support. */
    private List<Choice> choices(Place place) {
        if (place.formation() != null) {
            return filling.takes(place.formation());
        }
        BitSet some = new BitSet();
        if (place.support()) {
            for (SupportView support : part.now().supports()) {
                for (Room room : support.rooms()) {
                    for (int i = room.of().nextChoice(0); i >= 0; i = room.of().nextChoice(i + 1)) {
                        some.set(i);
                    }
                }
            }
        }
        List<Choice> chosen = new ArrayList<>();
        for (Choice choice : part.now().choices()) {
            boolean fits = place.support() ? some.get(choice.index())
                    : choice instanceof FormationView || !part.now().hasFormations();
            if (fits && filling.mayTake(choice)) {
                chosen.add(choice);
            }
        }
        return chosen;
    }
}
