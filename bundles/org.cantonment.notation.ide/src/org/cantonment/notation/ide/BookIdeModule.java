package org.cantonment.notation.ide;

import org.eclipse.xtext.ide.editor.contentassist.IPrefixMatcher;
import org.eclipse.xtext.ide.editor.contentassist.antlr.IContentAssistParser;

/** What the notation's services do in their own way. */
public class BookIdeModule extends AbstractBookIdeModule {

    @Override
    public Class<? extends IContentAssistParser> bindIContentAssistParser() {
        return LineCompletionParser.class;
    }

    @Override
    public Class<? extends IPrefixMatcher> bindIPrefixMatcher() {
        return HumpMatcher.class;
    }
}
