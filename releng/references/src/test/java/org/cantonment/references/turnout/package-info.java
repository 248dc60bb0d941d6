/** Turnouts beside JGraphT's flows. */
package org.cantonment.references.turnout;
