/** How far a player's shelf is from every formation in every era. */
package org.cantonment.desk.reach;
