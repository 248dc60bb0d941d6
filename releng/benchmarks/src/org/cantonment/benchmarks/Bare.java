package org.cantonment.benchmarks;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

import org.cantonment.notation.BookStandaloneSetup;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.linking.lazy.LazyLinkingResource;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.CancelIndicator;

import com.google.inject.Injector;

/** The bare minimum that Xtext itself needs: text to model, names to things, and nothing else. */
final class Bare {
    private static final Map<Object, Object> UTF_8 = Map.of(XtextResource.OPTION_ENCODING, "UTF-8");

    private final XtextResourceSet set;

    Bare() {
        Injector injector = new BookStandaloneSetup().createInjectorAndDoEMFRegistration();
        set = injector.getInstance(XtextResourceSet.class);
    }

    /** Takes a text in, parsed and its names indexed, but not yet looked up. */
    LazyLinkingResource load(Path file) throws IOException {
        LazyLinkingResource resource = (LazyLinkingResource) set.createResource(URI.createFileURI(file.toString()));
        resource.load(new ByteArrayInputStream(Files.readString(file).getBytes(StandardCharsets.UTF_8)), UTF_8);
        return resource;
    }

    /** Looks up every name of a text. */
    static void link(LazyLinkingResource resource) {
        resource.resolveLazyCrossReferences(CancelIndicator.NullImpl);
    }

    /** Takes one change of a text in, as an editor would, and looks its names up. */
    static void change(LazyLinkingResource resource, int offset, int length, String text) {
        resource.update(offset, length, text);
        link(resource);
    }

    /** Parses the whole text anew and looks its names up. */
    static void reparse(LazyLinkingResource resource, String text) throws IOException {
        resource.reparse(text);
        link(resource);
    }
}
