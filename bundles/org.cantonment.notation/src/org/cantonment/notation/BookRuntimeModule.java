package org.cantonment.notation;

import org.cantonment.notation.names.BookLinkingService;
import org.cantonment.notation.names.BookResource;
import org.cantonment.notation.names.NameMessages;
import org.cantonment.notation.parse.BookValues;
import org.cantonment.notation.parse.FormMessages;
import org.cantonment.notation.parse.LineParser;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.linking.ILinkingDiagnosticMessageProvider;
import org.eclipse.xtext.linking.ILinkingService;
import org.eclipse.xtext.parser.IParser;
import org.eclipse.xtext.parser.antlr.ISyntaxErrorMessageProvider;
import org.eclipse.xtext.resource.XtextResource;

/** What the notation does in its own way: bindings that replace Xtext's own. */
public class BookRuntimeModule extends AbstractBookRuntimeModule {

    @Override
    public Class<? extends IParser> bindIParser() {
        return LineParser.class;
    }

    @Override
    public Class<? extends IValueConverterService> bindIValueConverterService() {
        return BookValues.class;
    }

    @Override
    public Class<? extends XtextResource> bindXtextResource() {
        return BookResource.class;
    }

    @Override
    public Class<? extends ILinkingService> bindILinkingService() {
        return BookLinkingService.class;
    }

    /** @return plain words for a line that cannot be read */
    public Class<? extends ISyntaxErrorMessageProvider> bindISyntaxErrorMessageProvider() {
        return FormMessages.class;
    }

    /** @return plain words for a name that nobody has */
    public Class<? extends ILinkingDiagnosticMessageProvider> bindILinkingDiagnosticMessageProvider() {
        return NameMessages.class;
    }
}
