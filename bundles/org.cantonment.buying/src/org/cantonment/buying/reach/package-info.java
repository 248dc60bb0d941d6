/** How far a shelf is from formations, in pieces and in money, and what each box on sale would bring within reach. */
package org.cantonment.buying.reach;
