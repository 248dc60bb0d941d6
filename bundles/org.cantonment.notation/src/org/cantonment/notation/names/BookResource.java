package org.cantonment.notation.names;

import org.cantonment.model.book.Book;
import org.eclipse.xtext.linking.lazy.LazyLinkingResource;

/** A book's text and model; tells the folder's table of names what it names, before anybody looks one up. */
public class BookResource extends LazyLinkingResource {

    @Override
    protected void doLinking() {
        if (getResourceSet() != null && getParseResult() != null) {
            NameTable.of(getResourceSet()).put(this,
                    getParseResult().getRootASTElement() instanceof Book book ? BookNames.of(book) : java.util.List.of());
        }
        super.doLinking();
    }
}
