package org.cantonment.notation.scoping;

/** Which names may stand where. */
public class BookScopeProvider extends AbstractBookScopeProvider {
}
