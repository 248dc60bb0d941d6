/** What would make a list legal: edits of lists, and the least of them. */
package org.cantonment.rules.change;
