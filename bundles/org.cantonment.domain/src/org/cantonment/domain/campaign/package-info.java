/** A season of linked games: players, rounds, what scores, what is lost, and the deeds of every week. */
package org.cantonment.domain.campaign;
