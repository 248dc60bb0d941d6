package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Casualties;
import org.cantonment.domain.campaign.Destroys;
import org.cantonment.domain.campaign.Fund;
import org.cantonment.domain.campaign.FundCap;
import org.cantonment.domain.campaign.Outcome;
import org.cantonment.domain.campaign.Pays;
import org.cantonment.domain.campaign.Rebuilds;
import org.cantonment.domain.campaign.Wounds;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.rules.Rounding;
import org.cantonment.model.book.Line;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.FundStart;
import org.cantonment.notation.reading.Under.Taken;

/** Reads what games cost and what comes back, whether it stands under the casualties or under a fund. */
final class LossReader {

    private final Reading reading;
    private final Phrases phrases;
    private final List<Destroys> destroys = new ArrayList<>();
    private final List<Wounds> wounds = new ArrayList<>();
    private final List<Pays> pays = new ArrayList<>();
    private final List<Rebuilds> rebuilds = new ArrayList<>();
    private final List<FundCap> caps = new ArrayList<>();

    LossReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
    }

    Casualties casualties(org.cantonment.model.campaign.Casualties card) {
        Id id = reading.id(card);
        Under.each(reading, id, card.getLines(), Under.words("casualties", card), (line, at) -> {
            Taken taken = loss(line, at);
            return taken == Taken.NO ? money(line, at) : taken;
        });
        return new Casualties(id, Reading.label(card), phrases.when(card.getWhen()), destroys, wounds, pays, rebuilds,
                caps, Reading.notes(card.getLines()));
    }

    Fund fund(org.cantonment.model.campaign.Fund card) {
        Id id = reading.id(card);
        Said<Integer> start = new Said<>(reading);
        Under.each(reading, id, card.getLines(), Under.words("fund", card), (line, at) -> {
            if (line instanceof FundStart with) {
                start.say(with, Optional.ofNullable(with.getAmount()));
                return Taken.ALONE;
            }
            return money(line, at);
        });
        return new Fund(id, Reading.label(card), start.value().orElse(0), pays, rebuilds, caps,
                Reading.notes(card.getLines()));
    }

    private Taken loss(Line line, Id id) {
        if (line instanceof org.cantonment.model.campaign.Destroys lost) {
            destroys(lost, id).ifPresent(destroys::add);
            return Taken.ALONE;
        }
        if (line instanceof org.cantonment.model.campaign.Wounds hurt) {
            wounds(hurt, id).ifPresent(wounds::add);
            return Taken.ALONE;
        }
        return Taken.NO;
    }

    private Taken money(Line line, Id id) {
        if (line instanceof org.cantonment.model.campaign.Pays in) {
            pays(in, id).ifPresent(pays::add);
        } else if (line instanceof org.cantonment.model.campaign.Rebuilds again) {
            rebuilds(again, id).ifPresent(rebuilds::add);
        } else if (line instanceof org.cantonment.model.campaign.FundCap cap) {
            if (cap.getAmount() != null) {
                Reading.ref(cap.getFund()).ifPresent(
                        fund -> caps.add(new FundCap(id, cap.getAmount(), fund, phrases.when(cap.getWhen()))));
            }
        } else {
            return Taken.NO;
        }
        return Taken.ALONE;
    }

    private Optional<Destroys> destroys(org.cantonment.model.campaign.Destroys lost, Id id) {
        Optional<Outcome> outcome = Words.of(Outcome.class, lost.getOutcome());
        boolean nothing = lost.getCount() == null && lost.getPercent() == null;
        if (outcome.isEmpty() || nothing || Things.lost(lost.getWhat())) {
            return Optional.empty();
        }
        OptionalInt per = phrases.positive(lost, CampaignPackage.Literals.DESTROYS__PER, lost.getPer());
        OptionalInt percent = lost.getPercent() == null ? OptionalInt.empty()
                : OptionalInt.of(reading.percent(lost, CampaignPackage.Literals.DESTROYS__PERCENT, lost.getPercent()));
        return Optional.of(new Destroys(id, outcome.get(), Reading.optional(lost.getCount()), per, percent,
                Reading.refs(lost.getWhat()), Optional.ofNullable(lost.getMeans()), phrases.when(lost.getWhen())));
    }

    private Optional<Wounds> wounds(org.cantonment.model.campaign.Wounds hurt, Id id) {
        if (hurt.getPercent() == null || hurt.getCount() == null) {
            return Optional.empty();
        }
        int percent = reading.percent(hurt, CampaignPackage.Literals.WOUNDS__PERCENT, hurt.getPercent());
        int rounds = reading.atLeastOne(hurt, CampaignPackage.Literals.WOUNDS__COUNT, hurt.getCount());
        Rounding rounding = Words.of(Rounding.class, hurt.getRounding()).orElse(Rounding.EXACT);
        return Optional.of(new Wounds(id, percent, rounding, rounds, phrases.when(hurt.getWhen())));
    }

    private Optional<Pays> pays(org.cantonment.model.campaign.Pays in, Id id) {
        Optional<Outcome> outcome = Words.of(Outcome.class, in.getOutcome());
        boolean whole = in.getAmount() != null && (in.isGame() || outcome.isPresent());
        return !whole ? Optional.empty() : Reading.ref(in.getFund())
                .map(fund -> new Pays(id, in.getAmount(), fund, in.isGame(), outcome, phrases.when(in.getWhen())));
    }

    private Optional<Rebuilds> rebuilds(org.cantonment.model.campaign.Rebuilds again, Id id) {
        List<Id> what = Reading.refs(again.getWhat());
        return what.isEmpty() || again.getAmount() == null ? Optional.empty() : Reading.ref(again.getFund())
                .map(fund -> new Rebuilds(id, what, again.getAmount(), fund, phrases.when(again.getWhen())));
    }
}
