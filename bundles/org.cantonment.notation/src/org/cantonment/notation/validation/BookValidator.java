package org.cantonment.notation.validation;

/** Findings that need nothing but the text. */
public class BookValidator extends AbstractBookValidator {
}
