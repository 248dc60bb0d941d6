/** What is found in a whole project, kept as markers so that it is there at the next start too. */
package org.cantonment.workbench.check;
