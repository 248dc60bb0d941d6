package org.cantonment.notation.ide;

import org.cantonment.notation.BookRuntimeModule;
import org.cantonment.notation.BookStandaloneSetup;
import org.eclipse.xtext.util.Modules2;

import com.google.inject.Guice;
import com.google.inject.Injector;

/** The notation together with its services: for the language server and the editor. */
public class BookIdeSetup extends BookStandaloneSetup {

    @Override
    public Injector createInjector() {
        return Guice.createInjector(Modules2.mixin(new BookRuntimeModule(), new BookIdeModule()));
    }
}
