/** What can be had on a day: boxes, offers and lots, from whom, on what terms, in one currency. */
package org.cantonment.buying.market;
