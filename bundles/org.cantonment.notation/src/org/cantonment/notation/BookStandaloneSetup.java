package org.cantonment.notation;

import org.cantonment.model.book.BookPackage;
import org.eclipse.emf.ecore.EPackage;

import com.google.inject.Injector;

/** Sets the notation up, inside Eclipse and outside it alike: once, before the first file is read. */
public class BookStandaloneSetup extends BookStandaloneSetupGenerated {

    @Override
    public Injector createInjectorAndDoEMFRegistration() {
        // The grammar imports its model by name only; whoever reads a file must find it in the registry.
        EPackage.Registry.INSTANCE.put(BookPackage.eNS_URI, BookPackage.eINSTANCE);
        return super.createInjectorAndDoEMFRegistration();
    }
}
