package org.cantonment.rules.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Mend;
import org.cantonment.domain.finding.RemoveEntry;
import org.cantonment.rules.muster.Billeting;
import org.cantonment.rules.muster.Node;
import org.cantonment.rules.muster.Supporting;
import org.cantonment.rules.view.BilletView;
import org.cantonment.rules.view.Choice;
import org.cantonment.rules.view.Room;
import org.cantonment.rules.view.SupportView;

/** Supports: not too many, not too few; and units that stand in no formation. */
public final class SupportCheck implements Check {

    @Override
    public void check(Case about, Sink sink) {
        Supporting supporting = about.layout().supporting();
        for (SupportView support : about.ruling().supports()) {
            lacking(about, supporting, support, sink);
        }
        for (int i = 0; i < supporting.children().size(); i++) {
            Node node = supporting.children().get(i);
            long surplus = node.copies() - supporting.placement().placed()[i];
            if (surplus > 0) {
                surplus(about, supporting, node, surplus, sink);
            }
        }
    }

    private static void lacking(Case about, Supporting supporting, SupportView support, Sink sink) {
        Room room = support.rooms().get(supporting.placement().bays()[support.index()]);
        long min = room.span().min() * supporting.groups()[support.index()];
        int filled = supporting.placement().filled()[support.index()];
        if (filled < min) {
            List<Mend> mends = sink.mends(() -> added(about, support, room, (int) (min - filled)));
            sink.breach(support.id(), support.id(), "support.short", about.place(), Optional.of(support.rule()),
                    "Support " + support.title() + " takes " + room.words() + times(supporting, support) + " and has "
                            + filled + "; " + (min - filled) + " more must be taken.", mends);
        }
    }

    private static List<Mend> added(Case about, SupportView support, Room room, int count) {
        Choice choice = about.fills().cheapest(room.of());
        return choice == null ? List.of() : List.of(Mends.add(about, about.place(), true,
                Optional.of(support.id().name()), choice, count));
    }

    private static String times(Supporting supporting, SupportView support) {
        if (support.per().empty()) {
            return "";
        }
        String per = support.perCount() == 1 ? "each " : "every " + support.perCount() + " of ";
        return " for " + per + support.per().words() + ", here " + supporting.groups()[support.index()] + " times,";
    }

    private static void surplus(Case about, Supporting supporting, Node node, long surplus, Sink sink) {
        List<String> full = new ArrayList<>();
        Id card = null;
        for (SupportView support : about.ruling().supports()) {
            for (Room room : support.rooms()) {
                if (room.of().takes(node.choice().index())) {
                    card = card == null ? support.id() : card;
                    full.add("support " + support.title() + (support.permission().allowed()
                            ? " takes " + room.words() + times(supporting, support) + " and is full"
                            : ": " + support.permission().reason()));
                }
            }
        }
        List<Mend> mends = sink.mends(() -> mends(about, node, surplus));
        String many = surplus == node.copies() ? Words.entry(node) : surplus + " of " + Words.entry(node);
        Id unit = node.choice().id();
        if (card != null) {
            sink.breach(card, unit, "support.full", node.entry().id(), Optional.of(card),
                    "No place for " + many + ": " + String.join("; ", full) + '.', mends);
        } else if (node.support()) {
            sink.breach(unit, unit, "support.wrong-kind", node.entry().id(), Optional.empty(),
                    "No support of these rules takes " + node.choice().title() + '.', mends);
        } else {
            sink.breach(unit, unit, "unit.loose", node.entry().id(), Optional.empty(),
                    "No place for " + many + ": outside every formation, and no support takes it.", mends);
        }
    }

    /** Billets of the list that still have room for all of the entry. */
    private static List<Mend> mends(Case about, Node node, long surplus) {
        List<Mend> mends = new ArrayList<>(into(about, node));
        long perEntry = Math.max(1, node.copies() / Math.max(1, node.count()));
        mends.add(surplus == node.copies() ? new Mend("Strike " + Words.entry(node) + '.',
                List.of(new RemoveEntry(node.entry().id())))
                : Mends.take(node, (int) ((surplus + perEntry - 1) / perEntry)));
        return mends;
    }

    private static List<Mend> into(Case about, Node node) {
        for (Billeting billeting : about.layout().billetings()) {
            if (billeting.formation().copies() != 1) {
                continue;
            }
            List<BilletView> billets = billeting.formation().formation().billets();
            for (int b = 0; b < billets.size(); b++) {
                if (billeting.room(b).of().takes(node.choice().index())
                        && billeting.placement().filled()[b] + node.count() <= billeting.room(b).span().max()) {
                    return List.of(Mends.move(node, billeting.formation(), billets.get(b).name(),
                            billets.get(b).title()));
                }
            }
        }
        return List.of();
    }
}
