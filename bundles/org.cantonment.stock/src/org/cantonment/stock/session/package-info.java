/** One evening: all lists against all shelves and the club's box; who lends what to whom. */
package org.cantonment.stock.session;
