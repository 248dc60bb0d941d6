package org.cantonment.notation;

import java.util.Set;
import java.util.function.Supplier;

import org.eclipse.xtext.resource.XtextResourceSet;

import com.google.inject.Injector;

/** The notation itself: one for the whole process, since its grammar takes most of a second to load. */
public final class Notation {

    /** The endings of files that hold books. */
    public static final Set<String> ENDINGS = Set.of("range", "rules", "shelf", "list", "campaign", "week");

    private static Supplier<Injector> setup = () -> new BookStandaloneSetup().createInjectorAndDoEMFRegistration();

    private final Injector injector;

    private Notation(Injector injector) {
        this.injector = injector;
    }

    /** @return the notation, set up when it is first asked for */
    public static Notation get() {
        return Holder.NOTATION;
    }

    /**
     * Says how the notation is to be set up; for who needs more of it than reading, such as completion.
     *
     * @param other makes the one injector of this process
     * @throws IllegalStateException if the notation is in use already
     */
    public static synchronized void setUpBy(Supplier<Injector> other) {
        if (setup == null) {
            throw new IllegalStateException("The notation is in use already");
        }
        setup = other;
    }

    private static synchronized Notation create() {
        Supplier<Injector> used = setup;
        setup = null;
        return new Notation(used.get());
    }

    /** @return what Xtext's services for the notation are made by */
    public Injector injector() {
        return injector;
    }

    /** @return a new and empty library */
    public Library newLibrary() {
        return new Library(injector.getInstance(XtextResourceSet.class));
    }

    /** @return whether a file of this name holds a book */
    public static boolean isBook(String fileName) {
        int dot = fileName.lastIndexOf('.');
        return dot >= 0 && ENDINGS.contains(fileName.substring(dot + 1));
    }

    private static final class Holder {
        static final Notation NOTATION = create();
    }
}
