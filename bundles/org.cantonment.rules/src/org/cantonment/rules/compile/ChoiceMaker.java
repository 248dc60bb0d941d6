package org.cantonment.rules.compile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Span;
import org.cantonment.domain.rules.Billet;
import org.cantonment.domain.rules.Called;
import org.cantonment.domain.rules.Cost;
import org.cantonment.domain.rules.Costs;
import org.cantonment.domain.rules.Dearer;
import org.cantonment.domain.rules.Membership;
import org.cantonment.domain.rules.Need;
import org.cantonment.domain.rules.Needs;
import org.cantonment.domain.rules.Places;
import org.cantonment.domain.rules.SideOf;
import org.cantonment.domain.rules.Strength;
import org.cantonment.domain.rules.Successor;
import org.cantonment.domain.rules.Without;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.Step;
import org.cantonment.rules.view.UnitView;

/** Makes units and formations as they stand out of their cards. */
final class ChoiceMaker {

    private final Names names;
    private final Picker picker;
    private final Permissions permissions;
    private Surcharges surcharges;

    ChoiceMaker(Names names, Picker picker, Permissions permissions) {
        this.names = names;
        this.picker = picker;
        this.permissions = permissions;
    }

    /** The prices that hang on the rest of the list; they can be looked up once everything is announced. */
    void surcharges(Surcharges all) {
        this.surcharges = all;
    }

    /** Makes the card's title and kinds known under a number. */
    void announce(Card card, int index, boolean formation) {
        names.title(card.id(), picker.one(card.holding(Called.class)).map(said -> said.fact().text())
                .orElse(card.ruled().title()));
        names.enter(card.id(), index, kinds(card), formation);
    }

    private Set<Id> kinds(Card card) {
        List<Id> kinds = new ArrayList<>();
        Picker.top(card.holding(Membership.class)).forEach(line -> kinds.addAll(line.kinds()));
        return names.closure(kinds);
    }

    private static Set<Id> sides(Card card) {
        Set<Id> sides = new HashSet<>();
        Picker.top(card.holding(SideOf.class)).forEach(line -> sides.addAll(line.sides()));
        return Set.copyOf(sides);
    }

    UnitView unit(Card card, int index) {
        OptionMaker options = new OptionMaker(card);
        boolean priced = !card.holding(Strength.class).isEmpty() || !card.holding(Costs.class).isEmpty();
        List<Dearer> dearer = new ArrayList<>();
        picker.each(card.holding(Dearer.class), Dearer::beyond).forEach(said -> dearer.add(said.fact()));
        return new UnitView(card.id(), names.title(card.id()), index, kinds(card), sides(card), permissions.of(card),
                steps(card), priced, options.options(), options.past(), needs(card), List.copyOf(dearer),
                surcharges.of(card), successor(card));
    }

    private Optional<Successor> successor(Card card) {
        Optional<Said<Successor>> now = picker.one(card.holding(Successor.class));
        return now.or(() -> card.others(Successor.class).stream().findFirst()).map(Said::fact);
    }

    private static List<Needs> needs(Card card) {
        List<Said<Needs>> lines = card.holding(Needs.class);
        List<Needs> needs = new ArrayList<>(Picker.top(lines.stream().filter(said -> said.fact().each()).toList()));
        needs.addAll(Picker.top(lines.stream().filter(said -> !said.fact().each()).toList()));
        return List.copyOf(needs);
    }

    private List<Step> steps(Card card) {
        Optional<Said<Costs>> flat = picker.one(card.holding(Costs.class));
        int base = flat.map(said -> said.fact().points()).orElse(0);
        List<Said<Strength>> lines = new ArrayList<>(card.holding(Strength.class));
        lines.removeIf(said -> withdrawn(card, said));
        List<Said<Strength>> picked = picker.each(lines, line -> Span.of(line.from(), line.to()));
        picked.sort(Comparator.<Said<Strength>>comparingInt(said -> -said.book())
                .thenComparingInt(said -> -said.closeness())
                .thenComparingInt(said -> said.fact().to() - said.fact().from())
                .thenComparingInt(said -> said.fact().from()));
        List<Step> steps = new ArrayList<>();
        for (Said<Strength> said : picked) {
            Strength line = said.fact();
            steps.add(new Step(line.from(), line.to(), base, line.cost(),
                    line.needs().isEmpty() ? inherited(lines, line) : line.needs(), line.id()));
        }
        if (steps.isEmpty()) {
            int most = flat.isPresent() || !card.holding(Strength.class).isEmpty() ? 1 : Span.UNBOUNDED;
            steps.add(new Step(1, most, base, new Cost(0, false), List.of(),
                    flat.map(said -> said.fact().id()).orElse(card.id())));
        }
        return List.copyOf(steps);
    }

    private static List<Need> inherited(List<Said<Strength>> lines, Strength line) {
        List<Need> needs = List.of();
        for (Said<Strength> said : lines) {
            Strength other = said.fact();
            if (other.from() == line.from() && other.to() == line.to() && !other.needs().isEmpty()) {
                needs = other.needs();
            }
        }
        return needs;
    }

    private static boolean withdrawn(Card card, Said<Strength> said) {
        for (Said<Without> without : card.holding(Without.class)) {
            for (int strength : without.fact().strengths()) {
                if (said.fact().from() == strength && said.fact().to() == strength && !said.outranks(without)) {
                    return true;
                }
            }
        }
        return false;
    }

    FormationView formation(Card card, int index) {
        List<Said<Billet>> lines = new ArrayList<>(card.holding(Billet.class));
        for (Said<Without> without : card.holding(Without.class)) {
            lines.removeIf(said -> without.fact().names().contains(said.fact().name()) && !said.outranks(without));
        }
        List<BilletView> billets = new ArrayList<>();
        for (Said<Billet> said : picker.each(lines, Billet::name)) {
            Billet billet = said.fact();
            billets.add(new BilletView(billet.name(), billet.label().isEmpty() ? billet.name() : billet.label(),
                    rooms(billet.places()), billet.id()));
        }
        Optional<Said<Costs>> costs = picker.one(card.holding(Costs.class));
        return new FormationView(card.id(), names.title(card.id()), index, kinds(card), sides(card),
                permissions.of(card), costs.map(said -> said.fact().points()).orElse(0),
                costs.map(said -> said.fact().id()), surcharges.of(card), List.copyOf(billets));
    }

    List<Room> rooms(List<Places> places) {
        List<Room> rooms = new ArrayList<>();
        for (Places some : places) {
            rooms.add(new Room(some.span(), names.selector(some.of())));
        }
        return List.copyOf(rooms);
    }
}
