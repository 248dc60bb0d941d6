/** Findings that need nothing but the text. */
package org.cantonment.notation.validation;
