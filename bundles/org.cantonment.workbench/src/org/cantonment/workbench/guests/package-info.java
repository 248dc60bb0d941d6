/** Checks that others wrote, in the product: they come as services, out of installed plug-ins and dropped jars. */
package org.cantonment.workbench.guests;
