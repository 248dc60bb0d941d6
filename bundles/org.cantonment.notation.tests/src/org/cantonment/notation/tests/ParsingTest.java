package org.cantonment.notation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

import org.cantonment.model.range.Family;
import org.cantonment.model.range.Piece;
import org.cantonment.model.range.Range;
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
        file.load(new ByteArrayInputStream("range Lake\nfamily Skiffs\npiece Punt in Skiffs\n".getBytes(StandardCharsets.UTF_8)), Map.of());
        assertEquals(List.of(), file.getErrors());
        Range lake = (Range) file.getContents().get(0);
        Family skiffs = (Family) lake.getLines().get(0);
        assertSame(skiffs, ((Piece) lake.getLines().get(1)).getFamily());
    }
}
