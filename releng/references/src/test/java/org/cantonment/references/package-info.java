/** The engines beside other libraries. */
package org.cantonment.references;
