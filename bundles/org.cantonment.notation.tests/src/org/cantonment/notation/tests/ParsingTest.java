package org.cantonment.notation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import org.cantonment.model.book.Book;
import org.cantonment.notation.ide.BookIdeSetup;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.junit.jupiter.api.Test;

/** A file becomes a document, and a name in it leads to what bears the name. */
class ParsingTest {

    @Test
    void aNameLeadsToWhatBearsIt() throws IOException {
        XtextResourceSet set = new BookIdeSetup().createInjectorAndDoEMFRegistration().getInstance(XtextResourceSet.class);
        XtextResource file = (XtextResource) set.createResource(URI.createURI("memory:/lake.range"));
        file.load(new ByteArrayInputStream("entry Skiff\nentry Punt like Skiff".getBytes(StandardCharsets.UTF_8)), Map.of());
        assertEquals(List.of(), file.getErrors());
        Book book = (Book) file.getContents().get(0);
        assertSame(book.getEntries().get(0), book.getEntries().get(1).getLike());
    }
}
