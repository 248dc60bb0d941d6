package org.cantonment.notation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.cantonment.notation.names.NameTable;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.util.LazyStringInputStream;

/**
 * All books of one folder, which see each other's names. Texts are put in, from files or from editors; putting one in
 * only reads its form and its names. What it means is read when asked for, so that a thousand books can be put in first.
 * Not safe for use by several threads at once.
 */
public final class Library {

    private final XtextResourceSet set;
    private final NameTable names;
    private final Map<Path, Document> documents = new LinkedHashMap<>();
    private final Map<Resource, Document> byResource = new LinkedHashMap<>();

    Library(XtextResourceSet set) {
        this.set = set;
        this.names = NameTable.of(set);
    }

    /** @return the books, in the order in which they came in */
    public Collection<Document> documents() {
        return List.copyOf(documents.values());
    }

    /** @return the book of a file */
    public Optional<Document> document(Path file) {
        return Optional.ofNullable(documents.get(file));
    }

    /** @return all names of the folder */
    public NameTable names() {
        return names;
    }

    /**
     * Puts a text in, in place of the one that the file had.
     *
     * @param file an absolute path, which need not exist
     * @param text the text
     * @return the book
     */
    public Document put(Path file, String text) {
        Document known = documents.get(file);
        XtextResource resource = known != null ? known.resource()
                : (XtextResource) set.createResource(URI.createFileURI(file.toString()));
        try {
            if (known != null) {
                resource.reparse(text);
                known.changed(text);
                return known;
            }
            resource.load(new LazyStringInputStream(text, "UTF-8"), Map.of(XtextResource.OPTION_ENCODING, "UTF-8"));
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory could not be read", e);
        }
        Document document = new Document(file, resource, text);
        documents.put(file, document);
        byResource.put(resource, document);
        return document;
    }

    /** Takes a book out. */
    public void remove(Path file) {
        Document document = documents.remove(file);
        if (document != null) {
            byResource.remove(document.resource());
            names.remove(document.resource());
            set.getResources().remove(document.resource());
        }
    }

    /**
     * Links those books anew that asked for a name which came, went or changed since this was called last. To be called
     * after books were put in or taken out, before their meaning is asked for.
     *
     * @return the books that must be read again for this, the changed ones themselves not included
     */
    public List<Document> linkAnew() {
        List<Document> anew = new ArrayList<>();
        for (Resource stale : names.takeStale()) {
            Document document = byResource.get(stale);
            if (document != null) {
                document.resource().relink();
                document.changed(document.text());
                anew.add(document);
            }
        }
        return anew;
    }
}
