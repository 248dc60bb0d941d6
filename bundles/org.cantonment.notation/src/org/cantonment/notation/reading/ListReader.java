package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.force.Body;
import org.cantonment.domain.force.Borrow;
import org.cantonment.domain.force.Brought;
import org.cantonment.domain.force.Contingent;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.range.Certainty;
import org.cantonment.domain.range.Content;
import org.cantonment.model.book.Line;
import org.cantonment.model.force.Brings;
import org.cantonment.model.force.BroughtItem;
import org.cantonment.model.force.ForcePackage;
import org.cantonment.model.range.RangePackage;

/** Reads a force list. */
public final class ListReader {

    private final org.cantonment.model.force.ForceList book;
    private final Reading reading;
    private final Phrases phrases;
    private final BodyReader bodies;
    private final List<Line> loose = new ArrayList<>();
    private final List<Contingent> contingents = new ArrayList<>();
    private final List<Borrow> borrowed = new ArrayList<>();
    private final List<Brought> brought = new ArrayList<>();

    private ListReader(org.cantonment.model.force.ForceList book, Reading reading) {
        this.book = book;
        this.reading = reading;
        this.phrases = Phrases.of(reading, book, null, null);
        this.bodies = new BodyReader(reading, reading.bookId());
    }

    /**
     * @param book a list as written
     * @return the id it is known by: its own name, or its player's with the round, as in {@code Ombra/4}
     */
    public static String idOf(org.cantonment.model.force.ForceList book) {
        if (book.getName() != null) {
            return book.getName();
        }
        boolean known = book.getPlayer() != null && !book.getPlayer().eIsProxy() && book.getPlayer().getName() != null;
        String player = known ? book.getPlayer().getName() : "List";
        return book.getRound() == null ? player : player + '/' + book.getRound();
    }

    /**
     * @param book    a list as written
     * @param reading takes its places and problems
     * @return what it means
     */
    public static ForceList read(org.cantonment.model.force.ForceList book, Reading reading) {
        return new ListReader(book, reading).read();
    }

    private ForceList read() {
        reading.at(reading.bookId(), book);
        for (Line card : book.getLines()) {
            card(card);
        }
        OptionalInt round = phrases.positive(book, ForcePackage.Literals.FORCE_LIST__ROUND, book.getRound());
        Body body = bodies.read(loose);
        List<String> notes = new ArrayList<>(Reading.notes(book.getNotes()));
        notes.addAll(Reading.notes(book.getLines()));
        return new ForceList(reading.bookId(), Reading.ref(book.getPlayer()), round, Reading.refs(book.getRules()),
                Reading.ref(book.getEra()), Reading.optional(book.getPoints()), body, contingents, borrowed, brought,
                notes);
    }

    private void card(Line card) {
        if (card instanceof org.cantonment.model.force.Contingent contingent) {
            contingent(contingent);
        } else if (card instanceof org.cantonment.model.force.Borrow borrow) {
            borrow(borrow);
        } else if (card instanceof Brings brings) {
            brings(brings);
        } else {
            loose.add(card);
            return;
        }
        if (!(card instanceof org.cantonment.model.force.Contingent)) {
            card.getLines().forEach(line -> reading.misplaced(line, "this line"));
        }
    }

    private void contingent(org.cantonment.model.force.Contingent contingent) {
        if (contingent.getName() == null) {
            return;
        }
        Id id = reading.at(reading.bookId().child(contingent.getName()), contingent);
        contingents.add(new Contingent(id, Reading.label(contingent), Reading.refs(contingent.getRules()),
                Reading.optional(contingent.getPoints()), bodies.read(contingent.getLines()),
                Reading.notes(contingent.getLines())));
    }

    private void borrow(org.cantonment.model.force.Borrow borrow) {
        List<Content> things = new ArrayList<>();
        for (org.cantonment.model.range.Content thing : borrow.getThings()) {
            Reading.ref(thing.getWhat()).ifPresent(what -> things.add(new Content(Certainty.KNOWN,
                    reading.atLeastOne(thing, RangePackage.Literals.CONTENT__COUNT, thing.getCount()), what)));
        }
        Optional<Id> lender = Reading.ref(borrow.getLender());
        if (!things.isEmpty() && (borrow.isClub() || lender.isPresent())) {
            Id id = reading.at(reading.bookId().child("borrow").line(borrowed.size() + 1), borrow);
            borrowed.add(new Borrow(id, things, lender));
        }
    }

    private void brings(Brings brings) {
        for (BroughtItem each : brings.getItems()) {
            Reading.ref(each.getItem()).ifPresent(item -> brought.add(new Brought(
                    reading.at(reading.bookId().child("brings").line(brought.size() + 1), each),
                    reading.atLeastOne(each, ForcePackage.Literals.BROUGHT_ITEM__COUNT, each.getCount()), item)));
        }
    }
}
