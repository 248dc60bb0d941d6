package org.cantonment.editor.api;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.core.resources.IFile;
import org.eclipse.xtext.resource.XtextResource;

/**
 * A text that a group has taken in.
 *
 * @param resource the file's resource, parsed from that text
 * @param renewed the other files whose links were renewed because a name has come, gone or changed
 */
public record Taken(XtextResource resource, Collection<IFile> renewed) {

    /** Copies the files. */
    public Taken {
        Objects.requireNonNull(resource, "resource");
        renewed = List.copyOf(renewed);
    }
}
