/** The notation and the desk as the editor sees them. */
package org.cantonment.workbench.notation;
