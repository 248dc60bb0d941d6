/** Buying beside OR-Tools. */
package org.cantonment.references.buying;
