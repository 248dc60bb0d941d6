/** Which names may stand where. */
package org.cantonment.notation.scoping;
