/** What makers sell: piece types, parts, boxes, and the offers for them. */
package org.cantonment.domain.range;
