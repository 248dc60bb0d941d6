package org.cantonment.notation;

/** What the notation does in its own way: bindings that replace Xtext's own. */
public class BookRuntimeModule extends AbstractBookRuntimeModule {
}
