/** Which name means what: one flat table of names for a folder of books, and the words for a name that means nothing. */
package org.cantonment.notation.names;
