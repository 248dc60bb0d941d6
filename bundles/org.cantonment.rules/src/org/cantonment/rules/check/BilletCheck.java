package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.Severity;
import org.cantonment.rules.muster.Billeting;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.FormationView;
import org.cantonment.rules.view.Room;

/** Formations: compulsory billets filled, and a billet for everybody. */
public final class BilletCheck implements Check {

    private static final int MOST_NAMED = 3;

    @Override
    public void check(Case about, Sink sink) {
        for (Billeting billeting : about.layout().billetings()) {
            lacking(about, billeting, sink);
            for (int i = 0; i < billeting.children().size(); i++) {
                int surplus = billeting.children().get(i).count() - billeting.placement().placed()[i];
                if (surplus > 0) {
                    surplus(about, billeting, billeting.children().get(i), surplus, sink);
                }
            }
            if (!billeting.placement().proven()) {
                Node node = billeting.formation();
                sink.add(node.choice().id(), node.choice().id(), Finding.of("billet.unproven", Severity.CAUTION,
                        node.entry().id(), "The billets of " + Words.entry(node) + " can be used in so many ways that "
                                + "not all were tried; there may be a better placing. Name the billets to be sure."));
            }
        }
    }

    private static void lacking(Case about, Billeting billeting, Sink sink) {
        Node node = billeting.formation();
        FormationView formation = node.formation();
        for (int b = 0; b < formation.billets().size(); b++) {
            BilletView billet = formation.billets().get(b);
            int filled = billeting.placement().filled()[b];
            int lacking = billeting.room(b).span().min() - filled;
            if (lacking > 0) {
                int index = b;
                String has = filled == 0 ? "none" : Integer.toString(filled);
                sink.breach(formation.id(), formation.id(), filled == 0 ? "billet.empty" : "billet.short",
                        node.entry().id(), Optional.of(billet.rule()), Words.entry(node) + ": billet " + billet.title()
                                + " takes " + rooms(billet) + " and has " + has + "; " + lacking + " more must be placed.",
                        sink.mends(() -> fill(about, billeting, index, lacking)));
            }
        }
    }

    static String rooms(BilletView billet) {
        StringJoiner words = new StringJoiner(", or ");
        billet.rooms().forEach(room -> words.add(room.words()));
        return words.toString();
    }

    private static List<Mend> fill(Case about, Billeting billeting, int billet, int lacking) {
        BilletView view = billeting.formation().formation().billets().get(billet);
        List<Room> rooms = lacking == billeting.room(billet).span().min() ? view.rooms()
                : List.of(billeting.room(billet));
        Choice best = null;
        int count = 0;
        long least = Long.MAX_VALUE;
        for (Room room : rooms) {
            Choice choice = about.fills().cheapest(room.of());
            int wanted = rooms.size() == 1 ? lacking : room.span().min();
            if (choice != null && wanted > 0 && about.fills().cost(choice) * wanted < least) {
                best = choice;
                count = wanted;
                least = about.fills().cost(choice) * wanted;
            }
        }
        return best == null ? List.of() : List.of(Mends.add(about, billeting.formation().entry().id(), false,
                Optional.of(view.name()), best, count));
    }

    private static void surplus(Case about, Billeting billeting, Node child, int surplus, Sink sink) {
        FormationView formation = billeting.formation().formation();
        List<String> full = new ArrayList<>();
        Optional<Id> rule = Optional.empty();
        for (int b = 0; b < formation.billets().size(); b++) {
            BilletView billet = formation.billets().get(b);
            if (takes(billet, child.choice()) && !pinnedElsewhere(child, billet, formation)) {
                full.add(fullWords(billeting, b, child.choice()));
                rule = rule.or(() -> Optional.of(billet.rule()));
            }
        }
        List<Mend> mends = sink.mends(() -> {
            List<Mend> all = new ArrayList<>(unpinned(billeting, child, surplus));
            all.addAll(moves(about, billeting, child, surplus));
            all.add(Mends.take(child, surplus));
            return all;
        });
        Id id = formation.id();
        if (full.isEmpty()) {
            sink.breach(id, child.choice().id(), "billet.wrong-kind", child.entry().id(), Optional.of(id),
                    wrongKind(about, billeting, child), mends);
            return;
        }
        String many = surplus == child.count() ? Words.entry(child) : surplus + " of " + Words.entry(child);
        sink.breach(id, child.choice().id(), "billet.full", child.entry().id(), rule, "No place for " + many + " in "
                + Words.entry(billeting.formation()) + ": " + String.join("; ", full) + '.', mends);
    }

    private static boolean takes(BilletView billet, Choice choice) {
        return billet.rooms().stream().anyMatch(room -> room.of().takes(choice.index()));
    }

    private static boolean pinnedElsewhere(Node child, BilletView billet, FormationView formation) {
        Optional<String> pin = child.entry().billet();
        return pin.isPresent() && !pin.get().equals(billet.name())
                && formation.billets().stream().anyMatch(other -> other.name().equals(pin.get()));
    }

    private static String fullWords(Billeting billeting, int b, Choice choice) {
        BilletView billet = billeting.formation().formation().billets().get(b);
        Room used = billeting.room(b);
        if (!used.of().takes(choice.index())) {
            return "billet " + billet.title() + " is used for " + used.words() + ", and only one of its uses is allowed";
        }
        return "billet " + billet.title() + " takes " + used.words() + " and is full";
    }

    private static String wrongKind(Case about, Billeting billeting, Node child) {
        FormationView formation = billeting.formation().formation();
        String name = child.choice().title();
        Optional<String> pin = child.entry().billet();
        boolean pinned = pin.isPresent() && formation.billets().stream().anyMatch(b -> b.name().equals(pin.get()));
        StringBuilder words = new StringBuilder(pinned ? "Billet " + pin.get() : "No billet").append(" of ")
                .append(Words.entry(billeting.formation())).append(pinned ? " does not take " : " takes ").append(name);
        List<String> others = new ArrayList<>();
        for (FormationView other : near(about, formation)) {
            for (BilletView billet : other.billets()) {
                if (others.size() < MOST_NAMED && takes(billet, child.choice())) {
                    others.add("billet " + billet.title() + " of " + other.title());
                }
            }
        }
        return words.append(others.isEmpty() ? ", nor does any billet of another formation."
                : "; places for that: " + Words.and(others) + '.').toString();
    }

    /** Its own formation, then those of the list, then those that the list might have. */
    private static Set<FormationView> near(Case about, FormationView own) {
        Set<FormationView> near = new LinkedHashSet<>(List.of(own));
        for (Billeting billeting : about.layout().billetings()) {
            if (billeting.formation().choice().permission().allowed()) {
                near.add(billeting.formation().formation());
            }
        }
        for (Choice choice : about.ruling().choices()) {
            if (choice instanceof FormationView other && about.mayTake(other)) {
                near.add(other);
            }
        }
        return near;
    }

    /** Without its pin an entry may fit another billet of its own formation. */
    private static List<Mend> unpinned(Billeting billeting, Node child, int surplus) {
        FormationView formation = billeting.formation().formation();
        for (int b = 0; b < formation.billets().size(); b++) {
            BilletView billet = formation.billets().get(b);
            if (pinnedElsewhere(child, billet, formation) && billeting.room(b).of().takes(child.choice().index())
                    && billeting.placement().filled()[b] + surplus <= billeting.room(b).span().max()) {
                return List.of(Mends.unpin(child, billet.title()));
            }
        }
        return List.of();
    }

    private static List<Mend> moves(Case about, Billeting billeting, Node child, int surplus) {
        for (Billeting other : about.layout().billetings()) {
            FormationView formation = other.formation().formation();
            boolean inside = other.formation().index() >= child.index() && other.formation().index() < child.end();
            if (other == billeting || inside || surplus != child.count() || other.formation().copies() != 1) {
                continue;
            }
            for (int b = 0; b < formation.billets().size(); b++) {
                if (other.room(b).of().takes(child.choice().index())
                        && other.placement().filled()[b] + surplus <= other.room(b).span().max()) {
                    BilletView billet = formation.billets().get(b);
                    return List.of(Mends.move(child, other.formation(), billet.name(), billet.title()));
                }
            }
        }
        return List.of();
    }
}
