package org.cantonment.buying.formulate;

import java.util.Set;

import org.cantonment.domain.common.Id;

/**
 * A cap over what is built from one box or from several alike.
 *
 * @param own the most from the shelf; 0 if it is a cap over wares
 * @param ware the number of the ware; -1 for the shelf
 * @param each the most from one of the ware
 * @param weight what one build counts; 0 where each build counts its pieces
 */
record Room(Set<Id> of, int own, int ware, int each, int weight) {
}
