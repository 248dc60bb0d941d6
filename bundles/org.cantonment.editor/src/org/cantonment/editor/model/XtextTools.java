package org.cantonment.editor.model;

import java.util.Map;

import org.eclipse.xtext.ide.editor.contentassist.IdeContentProposalProvider;
import org.eclipse.xtext.ide.editor.contentassist.antlr.ContentAssistContextFactory;
import org.eclipse.xtext.parser.antlr.ITokenDefProvider;
import org.eclipse.xtext.parser.antlr.Lexer;
import org.eclipse.xtext.parser.antlr.LexerBindings;
import org.eclipse.xtext.resource.ILocationInFileProvider;
import org.eclipse.xtext.service.OperationCanceledManager;
import org.eclipse.xtext.validation.IResourceValidator;

import com.google.inject.Injector;
import com.google.inject.Key;
import com.google.inject.Provider;
import com.google.inject.name.Names;

/**
 * The Xtext services that the editor uses, taken from a language's injector once.
 *
 * @param cancelling tells a cancellation from a failure
 * @param validator makes the language's own findings
 * @param places tells where in its text a thing stands
 * @param lexers makes lexers for colouring
 * @param tokenNames from token number to the grammar's name
 * @param contexts makes the state of one completion
 * @param proposals makes proposals
 */
public record XtextTools(OperationCanceledManager cancelling, IResourceValidator validator,
        ILocationInFileProvider places, Provider<Lexer> lexers, Map<Integer, String> tokenNames,
        Provider<ContentAssistContextFactory> contexts, IdeContentProposalProvider proposals) {

    /**
     * Takes the services from an injector.
     *
     * @param injector a language's injector with the ide services bound
     * @return the services
     */
    public static XtextTools of(Injector injector) {
        return new XtextTools(injector.getInstance(OperationCanceledManager.class),
                injector.getInstance(IResourceValidator.class), injector.getInstance(ILocationInFileProvider.class),
                injector.getProvider(Key.get(Lexer.class, Names.named(LexerBindings.RUNTIME))),
                injector.getInstance(ITokenDefProvider.class).getTokenDefMap(),
                injector.getProvider(ContentAssistContextFactory.class),
                injector.getInstance(IdeContentProposalProvider.class));
    }
}
