/** The two books of a season: the shelf as it lies after any week or on any day, and the roll beside it. */
package org.cantonment.stock.ledger;
