/** What a bundle is worth: against single boxes, and to a player. */
package org.cantonment.buying.worth;
