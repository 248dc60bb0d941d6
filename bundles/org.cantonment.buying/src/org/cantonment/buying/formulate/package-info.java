/**
 * From a question in boxes and lists to a programme in whole numbers, and back. By Hall's theorem a list can be fielded if,
 * for each set of its needs, what may stand for any of them is enough: these rows take the place of an assignment wherever
 * the sets are few.
 */
package org.cantonment.buying.formulate;
