package org.cantonment.stock.session;

import org.cantonment.domain.common.Id;

/** So many of a piece type that one lends to another for the evening. */
public record Lent(Id from, Id to, Id type, int count) {
}
