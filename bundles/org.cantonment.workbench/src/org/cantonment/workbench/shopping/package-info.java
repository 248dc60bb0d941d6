/** The view of what to buy next, and of what a box is worth. */
package org.cantonment.workbench.shopping;
