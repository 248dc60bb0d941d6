/** One game's eras, units, formations and limits, as the organiser writes them down, and the house rules over them. */
package org.cantonment.domain.rules;
