package org.cantonment.desk.judging;

import java.util.List;
import java.util.Optional;

import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.CheckUse;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.finding.Finding;
import org.cantonment.rules.Verdict;
import org.cantonment.rules.guest.Guests;
import org.cantonment.rules.guest.Guests.Said;

/**
 * Asks the checks that campaigns turn on about lists that nobody has written yet: as a written list is asked about, but
 * nothing is kept. Any thread may ask.
 */
public final class Others {
    private final Guests guests;
    private final Meanings meanings;

    /** @param guests the checks at hand */
    public Others(Guests guests, Meanings meanings) {
        this.guests = guests;
        this.meanings = meanings;
    }

    /**
     * What they say of a list, in the order of the campaign's lines; nothing if its campaign turns none on.
     *
     * @param about   a case with a ruling
     * @param verdict what our own judge says of it
     * @throws Cancelled if the token says so
     */
    public List<Said> of(ListCase about, Verdict verdict, CancelToken cancel) {
        Campaign campaign = about.list().player().flatMap(meanings::campaignOf).orElse(null);
        if (campaign == null || campaign.checks().isEmpty()) {
            return List.of();
        }
        Judged judged = new Judged(about, Optional.of(verdict), List.of());
        return guests.ask(campaign.checks(), Asking.circumstances(Asking.ground(judged, campaign, meanings), cancel));
    }

    /** What is to be said against the lines that hold for a list: a check that nobody has, one that was shut out. */
    public List<Finding> ofLines(ListCase about) {
        List<CheckUse> uses = Asking.uses(about, meanings);
        return uses.isEmpty() ? List.of() : guests.ofLines(uses);
    }
}
