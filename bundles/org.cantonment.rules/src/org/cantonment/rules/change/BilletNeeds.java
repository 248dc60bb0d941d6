package org.cantonment.rules.change;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.ForceList;
import org.cantonment.rules.change.Edit.Kind;
import org.cantonment.rules.muster.Billeting;
import org.cantonment.rules.muster.Layout;
import org.cantonment.rules.muster.Muster;

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
        long deficit = billeting == null || needs.blurred() || !billeting.placement().proven() ? 1
                : plain ? lacking ? lacking(billeting) : surplus(billeting) : lacking(billeting) + surplus(billeting);
        long all = Math.max(1, deficit);
        return Need.of(all, needs.open(), edit -> effect(edit, place, plain, lacking, all));
    }

    private static long effect(Edit edit, Place place, boolean plain, boolean lacking, long all) {
        if (edit.group() == null) {
            return edit.place() == place && (!plain || lacking) ? 1 : 0;
        }
        if (edit.kind() == Kind.REMOVE && edit.group().formation() && (edit.group() == place.above()
                || place.above() != null && place.above().within(edit.group()))) {
            return all;
        }
        if (edit.group().home() != place) {
            return 0;
        }
        return switch (edit.kind()) {
            case UNPIN -> all;
            case SUCCEED -> plain ? 1 : 2;
            case REMOVE -> plain && lacking ? 0 : 1;
            default -> 0;
        };
    }

    private Billeting billeting(Place place, Finding finding, boolean lacking) {
        ForceList list = needs.draft().list();
        Body body = list.body();
        for (Contingent some : list.contingents()) {
            body = some.id().equals(place.part().id()) ? some.body() : body;
        }
        Muster muster = Muster.of(place.part().now(), place.part().id(), body);
        List<Billeting> all = Layout.of(muster, needs.board().situation().cancel()).billetings();
        Id at = finding.at();
        for (Billeting some : all) {
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
            lacking += Math.max(0, billeting.room(b).span().min() - billeting.placement().filled()[b]);
        }
        return lacking;
    }

    private static long surplus(Billeting billeting) {
        long surplus = 0;
        for (int i = 0; i < billeting.children().size(); i++) {
            surplus += billeting.children().get(i).count() - billeting.placement().placed()[i];
        }
        return surplus;
    }
}
