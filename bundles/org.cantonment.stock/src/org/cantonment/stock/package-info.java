/** What is there, and what it is enough for: pure answers over shelves, in pieces. */
package org.cantonment.stock;
