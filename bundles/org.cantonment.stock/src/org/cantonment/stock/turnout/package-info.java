/** Who stands where, or what is short, with the proof. */
package org.cantonment.stock.turnout;
