package org.cantonment.domain.range;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.joda.money.CurrencyUnit;

/** A book of piece types, boxes and offers. */
public record Range(
        Id id, String label, Optional<CurrencyUnit> currency, List<Family> families, List<Piece> pieces,
        List<Part> parts, List<Extra> extras, List<Bits> bits, List<Box> boxes, List<Seller> sellers,
        List<String> notes) implements Titled {

    public Range {
        families = List.copyOf(families);
        pieces = List.copyOf(pieces);
        parts = List.copyOf(parts);
        extras = List.copyOf(extras);
        bits = List.copyOf(bits);
        boxes = List.copyOf(boxes);
        sellers = List.copyOf(sellers);
        notes = List.copyOf(notes);
    }
}
