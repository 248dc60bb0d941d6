package org.cantonment.domain.range;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.common.Validity;

/** Something sold; a bundle is a box that is sold to replace several, which insteadOf names. */
public record Box(
        Id id, String label, boolean bundle, List<Content> contents, List<Cap> caps, List<Price> prices,
        List<Validity> sold, List<Stock> stock, List<String> codes, List<Printing> printings,
        List<Content> insteadOf, List<String> notes) implements Titled {

    public Box {
        contents = List.copyOf(contents);
        caps = List.copyOf(caps);
        prices = List.copyOf(prices);
        sold = List.copyOf(sold);
        stock = List.copyOf(stock);
        codes = List.copyOf(codes);
        printings = List.copyOf(printings);
        insteadOf = List.copyOf(insteadOf);
        notes = List.copyOf(notes);
    }
}
