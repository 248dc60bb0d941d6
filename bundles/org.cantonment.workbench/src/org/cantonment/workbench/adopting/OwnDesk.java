package org.cantonment.workbench.adopting;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskScope;
import org.cantonment.desk.adopting.Proposal;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.cantonment.workbench.guests.GuestHouse;

/**
 * A desk on which books may be adopted without anybody's knowing. It is kept from one question to the next, so that only
 * what has changed on the disk is read and judged again.
 */
final class OwnDesk {

    private CampaignDesk desk;
    private Set<Path> touched = Set.of();

    /**
     * What would come of a book.
     *
     * @param proposal what would change
     * @param desk the desk with the book adopted; for the one who asked, until the next question
     */
    record Looked(Proposal proposal, CampaignDesk desk) {
    }

    /**
     * Adopts a book in a folder as it is saved.
     *
     * @param folder the folder
     * @param file the book
     * @param text its text
     * @param cancel asked often
     * @param progress told how far it is
     * @return what came of it
     * @throws Proposal.Refused if there is nothing to adopt
     * @throws org.cantonment.domain.common.Cancelled if the token says so
     */
    synchronized Looked look(Path folder, Path file, String text, CancelToken cancel, Progress progress)
            throws Proposal.Refused {
        if (desk == null || !desk.scope().place().equals(folder)) {
            desk = null; // not kept if opening is given up
            desk = CampaignDesk.open(DeskScope.all(folder), GuestHouse.instance().guests(), cancel, progress);
        } else {
            touched.forEach(desk::letGo);
            desk.reload(cancel, progress);
        }
        touched = new LinkedHashSet<>();
        touched.add(file);
        desk.snapshot().meanings().campaigns()
                .forEach(campaign -> desk.snapshot().file(campaign).ifPresent(touched::add));
        return new Looked(Proposal.of(desk, file, text, cancel), desk);
    }
}
