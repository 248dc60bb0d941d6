/** Answers that open into their parts: a tree with columns, filled from snapshots. */
package org.cantonment.workbench.answers;
