/** The bare computing behind the answers, in numbers only: flows, and handfuls that cover a demand. */
package org.cantonment.stock.solve;
