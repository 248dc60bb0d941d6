/** Places in a text and changes to it: what findings, mends and the formatter are made of. */
package org.cantonment.notation.text;
