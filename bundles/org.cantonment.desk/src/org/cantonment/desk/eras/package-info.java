/** How a list stands in every era of its rules, and what a shelf is good for in each. */
package org.cantonment.desk.eras;
