/** What the start of the product costs before it does anything. */
package org.cantonment.nothing;
