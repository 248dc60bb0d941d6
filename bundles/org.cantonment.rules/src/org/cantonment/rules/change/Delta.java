package org.cantonment.rules.change;

import org.cantonment.rules.view.Choice;

/**
 * What an edit changes about one unit or formation.
 *
 * @param choice the unit or formation by the rules of the edit's own part
 * @param count how many more there are; negative if there are fewer
 * @param least by how much its points rise at least; negative if they fall
 * @param most by how much they rise at most: the two differ where the price depends on what else is in the list. What a
 *        formula adds is not in them; where it may take off, what is left at the least counts
 */
record Delta(Choice choice, long count, long least, long most) {
}
