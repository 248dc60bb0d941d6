package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.NameOf;
import org.cantonment.domain.campaign.NamesBook;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.finding.Severity;
import org.cantonment.model.book.Book;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.campaign.WeekBook;
import org.cantonment.notation.form.Codes;
import org.cantonment.notation.reading.Under.Taken;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** Reads a campaign, a week of it in a book of its own, and the book of its names. */
public final class CampaignReader {

    private CampaignReader() {
    }

    /**
     * @param book    the document, however broken
     * @param reading takes in the ids and what made no sense
     * @return all of the book that makes sense
     */
    public static Campaign read(org.cantonment.model.campaign.Campaign book, Reading reading) {
        Id id = reading.at(reading.bookId(), book);
        Phrases phrases = Phrases.of(reading, book, CampaignPackage.Literals.CAMPAIGN__CURRENCY, book.getCurrency());
        CampaignCards cards = new CampaignCards(reading, phrases);
        Under.each(reading, id, book.getLines(), "a campaign", cards::take);
        return cards.campaign(id, Reading.label(book),
                phrases.date(book, CampaignPackage.Literals.CAMPAIGN__DATE, book.getDate()), notes(book));
    }

    /**
     * @param book    the document, however broken; its id is that of the reading
     * @param reading takes in the ids and what made no sense
     * @return all of the book that makes sense; week 1 if no number is said
     */
    public static Week readWeek(WeekBook book, Reading reading) {
        Id id = reading.at(reading.bookId(), book);
        Phrases phrases = Phrases.of(reading, book, null, currency(book));
        int number = reading.atLeastOne(book, CampaignPackage.Literals.WEEK_BOOK__NUMBER, book.getNumber());
        WeekReader week = new WeekReader(reading, phrases, new DeedReader(reading, phrases));
        Under.each(reading, id, book.getLines(), "a week", week::take);
        return week.week(id, number, Reading.ref(book.getCampaign()), notes(book));
    }

    /**
     * @param book    the document, however broken; its id is that of the reading
     * @param reading takes in the ids and what made no sense
     * @return all of the book that makes sense; a campaign that nobody knows is given as it is written
     */
    public static NamesBook readNames(org.cantonment.model.campaign.NamesBook book, Reading reading) {
        Id id = reading.at(reading.bookId(), book);
        List<NameOf> names = new ArrayList<>();
        Set<Id> named = new HashSet<>();
        Under.each(reading, id, book.getLines(), "a book of names", (line, at) -> {
            if (!(line instanceof org.cantonment.model.campaign.NameOf name)) {
                return Taken.NO;
            }
            Optional<Id> player = Reading.ref(name.getPlayer());
            if (player.isPresent() && !named.add(player.get())) {
                reading.problem(name, CampaignPackage.Literals.NAME_OF__PLAYER, Severity.BREACH, Codes.TWICE,
                        "This player has a name above; the first holds.");
            } else {
                player.ifPresent(of -> names.add(new NameOf(at, of, Reading.text(name.getLabel()))));
            }
            return Taken.ALONE;
        });
        return new NamesBook(id, Reading.ref(book.getCampaign()).orElseGet(() -> asWritten(book)), names, notes(book));
    }

    private static Id asWritten(org.cantonment.model.campaign.NamesBook book) {
        List<INode> nodes = NodeModelUtils.findNodesForFeature(book, CampaignPackage.Literals.NAMES_BOOK__CAMPAIGN);
        String text = nodes.isEmpty() ? "" : NodeModelUtils.getTokenText(nodes.get(0));
        return Id.of(text.isEmpty() ? "?" : text);
    }

    private static List<String> notes(Book book) {
        List<String> notes = new ArrayList<>(Reading.notes(book.getNotes()));
        notes.addAll(Reading.notes(book.getLines()));
        return notes;
    }

    /** A week reckons in its campaign's currency; what is wrong with that is said there. */
    private static String currency(WeekBook week) {
        org.cantonment.model.campaign.Campaign campaign = week.getCampaign();
        String code = campaign == null || campaign.eIsProxy() ? null : campaign.getCurrency();
        return code == null || org.cantonment.domain.common.Amounts.currency(code).isEmpty() ? null : code;
    }
}
