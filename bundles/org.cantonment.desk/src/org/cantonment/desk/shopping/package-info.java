/** What to get: what a box is worth, what to buy next, and what to buy before which round, asked of a folder's books. */
package org.cantonment.desk.shopping;
