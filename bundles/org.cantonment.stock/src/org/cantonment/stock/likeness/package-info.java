/** What may stand for what at a time, and how true that is. */
package org.cantonment.stock.likeness;
