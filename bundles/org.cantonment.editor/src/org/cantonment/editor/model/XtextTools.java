package org.cantonment.editor.model;

import java.util.Map;

import org.eclipse.xtext.parser.antlr.ITokenDefProvider;
import org.eclipse.xtext.parser.antlr.Lexer;
import org.eclipse.xtext.parser.antlr.LexerBindings;
import org.eclipse.xtext.resource.ILocationInFileProvider;
import org.eclipse.xtext.service.OperationCanceledManager;

import com.google.inject.Injector;
import com.google.inject.Key;
import com.google.inject.Provider;
import com.google.inject.name.Names;

/**
 * The Xtext services that the editor uses, taken from a language's injector once.
 *
 * @param cancelling tells a cancellation from a failure
 * @param places tells where in its text a thing stands
 * @param lexers makes lexers for colouring
 * @param tokenNames from token number to the grammar's name
 */
public record XtextTools(OperationCanceledManager cancelling, ILocationInFileProvider places,
        Provider<Lexer> lexers, Map<Integer, String> tokenNames) {

    /**
     * Takes the services from an injector.
     *
     * @param injector a language's injector
     * @return the services
     */
    public static XtextTools of(Injector injector) {
        return new XtextTools(injector.getInstance(OperationCanceledManager.class),
                injector.getInstance(ILocationInFileProvider.class),
                injector.getProvider(Key.get(Lexer.class, Names.named(LexerBindings.RUNTIME))),
                injector.getInstance(ITokenDefProvider.class).getTokenDefMap());
    }
}
