package org.cantonment.stock.turnout;

import org.cantonment.domain.common.Id;

/** So many of a type that one lends to another for an evening. */
public record Loan(Id from, Id to, Id type, int count) {
}
