package org.cantonment.notation.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.campaign.Acceptance;
import org.cantonment.domain.campaign.Correction;
import org.cantonment.domain.campaign.Sealing;
import org.cantonment.domain.campaign.Struck;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.model.book.Line;
import org.cantonment.model.campaign.Accepted;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.Correct;
import org.cantonment.model.campaign.Deed;
import org.cantonment.model.campaign.Sealed;
import org.cantonment.notation.reading.Under.Taken;

/** The deeds of one week as they come in, from a card, a book of its own, or a campaign too small for weeks. */
final class WeekReader {

    private final Reading reading;
    private final Phrases phrases;
    private final DeedReader deedReader;
    private final DeedReader.Sentences deeds;
    private final List<Correction> corrections = new ArrayList<>();
    private final List<Acceptance> acceptances = new ArrayList<>();
    private final List<Sealing> sealings = new ArrayList<>();

    WeekReader(Reading reading, Phrases phrases, DeedReader deedReader) {
        this.reading = reading;
        this.phrases = phrases;
        this.deedReader = deedReader;
        deeds = deedReader.sentences();
    }

    boolean empty() {
        return deeds.deeds().isEmpty() && corrections.isEmpty() && acceptances.isEmpty() && sealings.isEmpty();
    }

    Week week(Id id, int number, Optional<Id> campaign, List<String> notes) {
        return new Week(id, number, campaign, deeds.deeds(), corrections, acceptances, sealings, notes);
    }

    /** Takes in a line of the week. */
    Taken take(Line line, Id id) {
        if (line instanceof Deed deed) {
            deeds.add(deed, id);
            return Taken.WITH_LINES;
        }
        if (line instanceof Correct correct) {
            correction(correct, id).ifPresent(corrections::add);
            return Taken.WITH_LINES;
        }
        if (line instanceof Accepted accepted) {
            acceptance(accepted, id).ifPresent(acceptances::add);
            return Taken.ALONE;
        }
        if (line instanceof Sealed sealed) {
            sealings.add(new Sealing(id, phrases.date(sealed, CampaignPackage.Literals.SEALED__DATE, sealed.getDate()),
                    Optional.ofNullable(sealed.getSeal())));
            return Taken.ALONE;
        }
        return Taken.NO;
    }

    private Optional<Correction> correction(Correct correct, Id id) {
        List<Struck> lines = new ArrayList<>();
        Under.each(reading, id, correct.getLines(), "a correction", (line, at) -> {
            if (line instanceof org.cantonment.model.campaign.Struck struck) {
                struck(struck, at).ifPresent(lines::add);
                return Taken.WITH_LINES;
            }
            return Taken.NO;
        });
        return correct.getNumber() == null ? Optional.empty() : Optional.of(new Correction(id,
                reading.atLeastOne(correct, CampaignPackage.Literals.CORRECT__NUMBER, correct.getNumber()),
                Reading.text(correct.getReason()), lines));
    }

    private Optional<Struck> struck(org.cantonment.model.campaign.Struck struck, Id id) {
        return struck.getDeed() == null ? Optional.empty()
                : deedReader.read(struck.getDeed(), struck.getLines(), id).map(deed -> new Struck(id, struck.isNot(), deed));
    }

    private Optional<Acceptance> acceptance(Accepted accepted, Id id) {
        Optional<LocalDate> on = phrases.date(accepted, CampaignPackage.Literals.ACCEPTED__DATE, accepted.getDate());
        if (accepted.getRound() == null) {
            return Optional.empty();
        }
        int round = reading.atLeastOne(accepted, CampaignPackage.Literals.ACCEPTED__ROUND, accepted.getRound());
        return Reading.ref(accepted.getPlayer())
                .map(player -> new Acceptance(id, player, round, on, Optional.ofNullable(accepted.getSeal())));
    }
}
