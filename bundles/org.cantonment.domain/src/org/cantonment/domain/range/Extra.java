package org.cantonment.domain.range;

import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Titled;
import org.joda.money.Money;

/** Something in a box that is no piece: a booklet, a ruler, dice. */
public record Extra(Id id, String label, Optional<Money> worth, List<String> notes) implements Titled {

    public Extra {
        notes = List.copyOf(notes);
    }
}
