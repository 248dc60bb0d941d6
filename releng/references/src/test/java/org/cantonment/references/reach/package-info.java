/** Reach beside another library. */
package org.cantonment.references.reach;
