/** How far a shelf is from each formation. */
package org.cantonment.stock.reach;
