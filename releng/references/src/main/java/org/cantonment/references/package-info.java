/** The same questions asked of other libraries, from the domain's records alone. */
package org.cantonment.references;
