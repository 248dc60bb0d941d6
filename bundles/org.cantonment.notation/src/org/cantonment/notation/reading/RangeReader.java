package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.range.Bits;
import org.cantonment.domain.range.Box;
import org.cantonment.domain.range.Extra;
import org.cantonment.domain.range.Family;
import org.cantonment.domain.range.Part;
import org.cantonment.domain.range.Piece;
import org.cantonment.domain.range.Range;
import org.cantonment.domain.range.Seller;
import org.cantonment.model.book.Line;
import org.cantonment.model.range.RangePackage;

/** Reads a book of piece types, boxes and offers. */
public final class RangeReader {

    private final Reading reading;
    private final Phrases phrases;
    private final RangeCircles circles;
    private final BoxReader boxReader;
    private final List<Family> families = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Extra> extras = new ArrayList<>();
    private final List<Bits> bits = new ArrayList<>();
    private final List<Box> boxes = new ArrayList<>();
    private final List<Seller> sellers = new ArrayList<>();

    private RangeReader(Reading reading, Phrases phrases) {
        this.reading = reading;
        this.phrases = phrases;
        circles = new RangeCircles(reading);
        boxReader = new BoxReader(reading, phrases, circles);
    }

    /**
     * @param book    the document, however broken
     * @param reading takes in the ids and what made no sense
     * @return all of the book that makes sense
     */
    public static Range read(org.cantonment.model.range.Range book, Reading reading) {
        Id id = reading.at(reading.bookId(), book);
        Phrases phrases = Phrases.of(reading, book, RangePackage.Literals.RANGE__CURRENCY, book.getCurrency());
        RangeReader reader = new RangeReader(reading, phrases);
        book.getLines().forEach(reader::card);
        List<String> notes = new ArrayList<>(Reading.notes(book.getNotes()));
        notes.addAll(Reading.notes(book.getLines()));
        return new Range(id, Reading.label(book), phrases.currency(), reader.families, reader.pieces, reader.parts,
                reader.extras, reader.bits, reader.boxes, reader.sellers, notes);
    }

    private void card(Line card) {
        if (card instanceof org.cantonment.model.range.Family family) {
            families.add(family(family));
        } else if (card instanceof org.cantonment.model.range.Piece piece) {
            pieces.add(piece(piece));
        } else if (card instanceof org.cantonment.model.range.Part part) {
            parts.add(boxReader.part(part));
        } else if (card instanceof org.cantonment.model.range.Extra extra) {
            extras.add(extra(extra));
        } else if (card instanceof org.cantonment.model.range.Bits some) {
            bits.add(bits(some));
        } else if (card instanceof org.cantonment.model.range.Box box) {
            boxes.add(boxReader.box(box));
        } else if (card instanceof org.cantonment.model.range.Seller seller) {
            sellers.add(new SellerReader(reading, phrases, seller).read());
        } else {
            reading.misplaced(card, "a range");
        }
    }

    private Family family(org.cantonment.model.range.Family family) {
        Id id = reading.id(family);
        Under.onlyNotes(reading, id, family.getLines(), Under.words("family", family));
        Optional<Id> parent = circles.inItself(family) ? Optional.empty() : Reading.ref(family.getFamily());
        return new Family(id, Reading.label(family), parent, Reading.notes(family.getLines()));
    }

    private Piece piece(org.cantonment.model.range.Piece piece) {
        Id id = reading.id(piece);
        Under.onlyNotes(reading, id, piece.getLines(), Under.words("piece", piece));
        return new Piece(id, Reading.label(piece), Reading.ref(piece.getFamily()), Reading.notes(piece.getLines()));
    }

    private Extra extra(org.cantonment.model.range.Extra extra) {
        Id id = reading.id(extra);
        Under.onlyNotes(reading, id, extra.getLines(), Under.words("extra", extra));
        return new Extra(id, Reading.label(extra), phrases.money(extra.getWorth()), Reading.notes(extra.getLines()));
    }

    private Bits bits(org.cantonment.model.range.Bits some) {
        Id id = reading.id(some);
        Under.onlyNotes(reading, id, some.getLines(), Under.words("bits", some));
        return new Bits(id, Reading.label(some), Reading.notes(some.getLines()));
    }
}
