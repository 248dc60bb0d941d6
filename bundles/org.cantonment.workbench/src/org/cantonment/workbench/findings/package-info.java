/** The view of everything that was found, across all books. */
package org.cantonment.workbench.findings;
