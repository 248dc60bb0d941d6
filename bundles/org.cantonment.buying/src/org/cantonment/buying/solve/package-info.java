/**
 * Least cost in whole numbers: linear programmes by branch and bound over a dual simplex. Floating point guides the search
 * and decides nothing: each bound and each proof that nothing can be had is checked in whole numbers before it counts.
 */
package org.cantonment.buying.solve;
