package org.cantonment.stock.ledger;

import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.common.Id;

/**
 * Things that lie with somebody else for a time.
 *
 * @param deed the line that says so
 * @param owner who lent them
 * @param holder who has them; the club if empty
 * @param count how many have not come back
 * @param until the week by which they are due back, if that was said
 */
public record Loan(Id deed, Id owner, Optional<Id> holder, Id what, int count, OptionalInt until) {
}
