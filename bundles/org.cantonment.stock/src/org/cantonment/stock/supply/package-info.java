/** What lies on shelves, counted: pieces, bits, and parts that may still be built one way or another. */
package org.cantonment.stock.supply;
