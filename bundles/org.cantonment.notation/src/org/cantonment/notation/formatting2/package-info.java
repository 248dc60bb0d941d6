/** How the notation is set in order on request. */
package org.cantonment.notation.formatting2;
