/** A player's choice for one era and one limit of points. */
package org.cantonment.domain.force;
