package org.cantonment.rules.change;

import java.util.BitSet;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Billeting;

/**
 * What findings about the billets of a formation ask for: that something is done in it, or that it goes. Where every
 * billet can be filled in one way only, what is lacking asks for more, and what has no place for less; where there are
 * alternatives, either may mend either.
 */
final class BilletNeeds {

    private final Needs needs;

    BilletNeeds(Needs needs) {
        this.needs = needs;
    }

    Need of(Finding finding) {
        boolean lacking = finding.code().equals("billet.empty") || finding.code().equals("billet.short");
        Group own = needs.board().group(finding.at());
        Place place;
        if (lacking) {
            place = own != null ? own.inside() : needs.draft().opened(finding.at());
        } else {
            place = own != null ? own.home() : needs.draft().standing(finding.at());
        }
        if (place == null || place.formation() == null) {
            return needs.anything();
        }
        return of(place, finding, lacking);
    }

    private Need of(Place place, Finding finding, boolean lacking) {
        Billeting billeting = billeting(place, finding, lacking);
        boolean plain = billeting != null && billeting.placement().proven()
                && place.formation().billets().stream().allMatch(billet -> billet.rooms().size() == 1);
        if (!plain) {
            long deficit = billeting == null || needs.blurred() || !billeting.placement().proven() ? 1
                    : lacking(billeting) + surplus(billeting);
            return Need.of(deficit, needs.open(), edit -> effect(edit, place, deficit, edit.kind() == Kind.SUCCEED ? 2 : 1));
        }
        Chain chain = new Chain(billeting);
        if (lacking) {
            int billet = billet(place, finding);
            BitSet some = chain.filling(billet);
            long deficit = needs.blurred() ? 1 : lacking(billeting, billet);
            return Need.of(deficit, needs.open(), edit -> effect(edit, place, deficit, comes(edit, place, some) ? 1 : 0));
        }
        BitSet some = chain.crowding(finding.at());
        return Need.of(1, needs.open(), edit -> effect(edit, place, 1, goes(edit, place, some) ? 1 : 0));
    }

    private static int billet(Place place, Finding finding) {
        for (int b = 0; b < place.formation().billets().size(); b++) {
            if (finding.rule().filter(place.formation().billets().get(b).rule()::equals).isPresent()) {
                return b;
            }
        }
        throw new IllegalStateException("No billet is behind " + finding);
    }

    private static boolean comes(Edit edit, Place place, BitSet some) {
        return edit.deltas().stream().anyMatch(delta -> delta.count() > 0
                && some.get(place.part().own(delta.choice()).index()));
    }

    private static boolean goes(Edit edit, Place place, BitSet some) {
        return !edit.deltas().isEmpty() && edit.deltas().get(0).count() < 0
                && some.get(place.part().own(edit.deltas().get(0).choice()).index());
    }

    private static long effect(Edit edit, Place place, long all, long inside) {
        if (edit.kind() == Kind.REMOVE && edit.group().formation() && (edit.group() == place.above()
                || place.above() != null && place.above().within(edit.group()))) {
            return all;
        }
        if ((edit.group() == null ? edit.place() : edit.group().home()) != place || edit.kind() == Kind.ALTER) {
            return 0;
        }
        return edit.kind() == Kind.UNPIN ? all : inside;
    }

    private Billeting billeting(Place place, Finding finding, boolean lacking) {
        Id at = finding.at();
        for (Billeting some : needs.draft().layout(place.part()).billetings()) {
            if (lacking ? some.formation().entry().id().equals(at)
                    : some.children().stream().anyMatch(child -> child.entry().id().equals(at))) {
                return some;
            }
        }
        return null;
    }

    private static long lacking(Billeting billeting) {
        long lacking = 0;
        for (int b = 0; b < billeting.placement().filled().length; b++) {
            lacking += lacking(billeting, b);
        }
        return lacking;
    }

    private static long lacking(Billeting billeting, int billet) {
        return Math.max(0, billeting.room(billet).span().min() - billeting.placement().filled()[billet]);
    }

    private static long surplus(Billeting billeting) {
        long surplus = 0;
        for (int i = 0; i < billeting.children().size(); i++) {
            surplus += billeting.children().get(i).count() - billeting.placement().placed()[i];
        }
        return surplus;
    }
}
