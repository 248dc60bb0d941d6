/** How a campaign folder gets onto the workbench. */
package org.cantonment.workbench.opening;
