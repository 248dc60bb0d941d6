/** Large questions of who stands where, and their greatest flow by JGraphT. */
package org.cantonment.references.turnout;
