/** Begins a check of one's own: the example's project with other names. */
package org.cantonment.workbench.author;
