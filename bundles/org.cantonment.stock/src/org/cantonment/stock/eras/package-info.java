/** What a shelf can field in each era, and what of it carries over. */
package org.cantonment.stock.eras;
