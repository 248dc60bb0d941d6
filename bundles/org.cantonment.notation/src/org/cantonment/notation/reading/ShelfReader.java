package org.cantonment.notation.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.shelf.Holding;
import org.cantonment.domain.shelf.Oddment;
import org.cantonment.domain.shelf.Shelf;
import org.cantonment.domain.shelf.Wish;
import org.cantonment.model.book.Line;
import org.cantonment.model.shelf.ShelfPackage;
import org.joda.money.Money;

/** Reads a collection as it lies in the cupboard. */
public final class ShelfReader {

    private final Reading reading;
    private final Phrases phrases;
    private final HoldingReader holdingReader;
    private final List<Holding> holdings = new ArrayList<>();
    private final List<Oddment> oddments = new ArrayList<>();
    private final List<Wish> wishes = new ArrayList<>();

    private ShelfReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
        holdingReader = new HoldingReader(reading, phrases);
    }

    /**
     * @param book    the document, however broken
     * @param reading takes in the ids and what made no sense
     * @return all of the book that makes sense
     */
    public static Shelf read(org.cantonment.model.shelf.Shelf book, Reading reading) {
        Id id = reading.at(reading.bookId(), book);
        Phrases phrases = Phrases.of(reading, book, ShelfPackage.Literals.SHELF__CURRENCY, book.getCurrency());
        Optional<LocalDate> on = phrases.date(book, ShelfPackage.Literals.SHELF__DATE, book.getDate());
        ShelfReader reader = new ShelfReader(reading, phrases);
        int number = 0;
        for (Line card : book.getLines()) {
            number++;
            reader.card(card, id.line(number));
        }
        List<String> notes = new ArrayList<>(Reading.notes(book.getNotes()));
        notes.addAll(Reading.notes(book.getLines()));
        return new Shelf(id, book.isClub(), Reading.refs(book.getOwners()), phrases.currency(), on, reader.holdings,
                reader.oddments, reader.wishes, notes);
    }

    private void card(Line card, Id id) {
        if (card instanceof org.cantonment.model.shelf.Holding holding) {
            holdingReader.read(holding, reading.at(id, card)).ifPresent(holdings::add);
        } else if (card instanceof org.cantonment.model.shelf.Oddment oddment) {
            oddments.add(oddment(oddment, reading.at(id, card)));
        } else if (card instanceof org.cantonment.model.shelf.Wish wish) {
            wishes.add(new WishReader(reading, phrases, wish).read());
        } else {
            reading.at(id, card);
            reading.misplaced(card, "a shelf");
        }
    }

    private Oddment oddment(org.cantonment.model.shelf.Oddment oddment, Id id) {
        Under.onlyNotes(reading, id, oddment.getLines(), "an oddment");
        Optional<Money> worth = phrases.money(oddment.getWorth());
        return new Oddment(id, Reading.number(oddment.getCount(), 1), Reading.text(oddment.getText()), worth);
    }
}
