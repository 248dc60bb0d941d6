package org.cantonment.notation.formatting2;

import org.cantonment.model.book.Book;
import org.eclipse.xtext.formatting2.AbstractJavaFormatter;
import org.eclipse.xtext.formatting2.IFormattableDocument;

/** Sets a file's blanks and line ends in order. */
public class BookFormatter extends AbstractJavaFormatter {

    protected void format(Book book, IFormattableDocument document) {
        book.getEntries().forEach(document::format);
    }
}
