/** The view of how a list stands in every era, and of what makes it legal there. */
package org.cantonment.workbench.eras;
