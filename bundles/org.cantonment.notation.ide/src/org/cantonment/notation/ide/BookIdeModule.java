package org.cantonment.notation.ide;

/** What the notation's services do in their own way. */
public class BookIdeModule extends AbstractBookIdeModule {
}
