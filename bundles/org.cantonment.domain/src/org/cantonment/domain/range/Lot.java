package org.cantonment.domain.range;

import java.util.List;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.cantonment.domain.common.Validity;
import org.joda.money.Money;

/** A mixed lot, sold as a whole and once. */
public record Lot(
        Id id, String label, Money money, Validity when, List<Content> contents, List<Cap> caps,
        List<String> notes) implements Titled {

    public Lot {
        contents = List.copyOf(contents);
        caps = List.copyOf(caps);
        notes = List.copyOf(notes);
    }
}
