package org.cantonment.workbench.notation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.cantonment.editor.api.FileGroup;
import org.cantonment.notation.names.NameTable;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

import com.google.inject.Injector;

/** The books of one project, which see one another. */
final class CampaignGroup implements FileGroup {

    private final IWorkspaceRoot root;
    private final XtextResourceSet resources;
    private final NameTable names;
    private final Set<IFile> held = new HashSet<>();

    CampaignGroup(IProject project, Injector injector) {
        root = project.getWorkspace().getRoot();
        resources = injector.getInstance(XtextResourceSet.class);
        names = NameTable.of(resources);
        try {
            for (IFile book : Books.below(project)) {
                peek(book);
            }
        } catch (CoreException unreadable) {
            throw new IllegalStateException("The folder of " + project.getName() + " cannot be read", unreadable);
        }
        names.takeStale(); // nothing has been looked up yet
    }

    @Override
    public XtextResource resource(IFile file) {
        held.add(file);
        return peek(file);
    }

    /** The resource of a file without taking it to be open. */
    XtextResource peek(IFile file) {
        XtextResource known = known(file);
        if (known == null) {
            known = (XtextResource) resources.createResource(uri(file));
            read(known, file);
        }
        return known;
    }

    private XtextResource known(IFile file) {
        return (XtextResource) resources.getResource(uri(file), false);
    }

    @Override
    public Set<IFile> updated(XtextResource resource) {
        return stale();
    }

    @Override
    public Set<IFile> released(IFile file) {
        held.remove(file);
        return changedOnDisk(file);
    }

    @Override
    public Set<IFile> changedOnDisk(IFile file) {
        XtextResource known = known(file);
        if (!file.exists()) {
            if (known != null) {
                names.remove(known);
                resources.getResources().remove(known);
            }
        } else if (known == null) {
            peek(file);
        } else {
            read(known, file);
        }
        return stale();
    }

    boolean isHeld(IFile file) {
        return held.contains(file);
    }

    /** The open books that asked for a name which has come, gone or changed since this was asked last. */
    private Set<IFile> stale() {
        Set<IFile> files = new HashSet<>();
        for (Resource book : names.takeStale()) {
            IFile file = root.getFile(IPath.fromPortableString(book.getURI().toPlatformString(true)));
            if (held.contains(file)) {
                files.add(file);
            }
        }
        return files;
    }

    private static void read(XtextResource resource, IFile file) {
        try (InputStream content = file.exists() ? file.getContents(true) : InputStream.nullInputStream()) {
            if (resource.isLoaded()) {
                resource.reparse(new String(content.readAllBytes(), file.getCharset()));
            } else {
                resource.load(content, Map.of(XtextResource.OPTION_ENCODING, file.getCharset()));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        } catch (CoreException unreadable) {
            throw new IllegalStateException(file.getFullPath() + " cannot be read", unreadable);
        }
    }

    private static URI uri(IFile file) {
        return URI.createPlatformResourceURI(file.getFullPath().toString(), true);
    }
}
