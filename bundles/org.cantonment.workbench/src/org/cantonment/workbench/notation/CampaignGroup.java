package org.cantonment.workbench.notation;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import org.cantonment.editor.api.FileGroup;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.IResourceDescription;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

import com.google.inject.Injector;

/** The books of one project, which see one another. */
final class CampaignGroup implements FileGroup {

    private final IProject project;
    private final XtextResourceSet resources;
    private final Map<IFile, Set<String>> exported = new HashMap<>();
    private final Set<IFile> held = new HashSet<>();

    CampaignGroup(IProject project, Injector injector) {
        this.project = project;
        resources = injector.getInstance(XtextResourceSet.class);
        try {
            for (IFile book : Books.below(project)) {
                load(book);
            }
        } catch (CoreException unreadable) {
            throw new IllegalStateException("The folder of " + project.getName() + " cannot be read", unreadable);
        }
    }

    @Override
    public XtextResource resource(IFile file) {
        held.add(file);
        Resource known = resources.getResource(uri(file), false);
        return (XtextResource) (known == null ? load(file) : known);
    }

    /** The resource of a file without taking it to be open. */
    XtextResource peek(IFile file) {
        Resource known = resources.getResource(uri(file), false);
        return (XtextResource) (known == null ? load(file) : known);
    }

    @Override
    public Set<IFile> updated(XtextResource resource) {
        IFile file = project.getWorkspace().getRoot()
                .getFile(IPath.fromPortableString(resource.getURI().toPlatformString(true)));
        return renewed(file, names(resource));
    }

    @Override
    public Set<IFile> released(IFile file) {
        held.remove(file);
        return changedOnDisk(file);
    }

    @Override
    public Set<IFile> changedOnDisk(IFile file) {
        Resource known = resources.getResource(uri(file), false);
        if (known != null) {
            known.unload();
            resources.getResources().remove(known);
        }
        Set<String> names = file.exists() ? names(load(file)) : Set.of();
        Set<IFile> all = new HashSet<>(renewed(file, names));
        all.addAll(held); // whoever pointed into the unloaded resource holds stale things
        all.remove(file);
        return all;
    }

    private Set<IFile> renewed(IFile file, Set<String> names) {
        Set<String> before = exported.put(file, names);
        if (names.equals(before)) {
            return Set.of();
        }
        return held.stream().filter(other -> !other.equals(file)).collect(Collectors.toSet());
    }

    private XtextResource load(IFile file) {
        XtextResource resource = (XtextResource) resources.createResource(uri(file));
        if (file.exists()) {
            try (InputStream content = file.getContents(true)) {
                resource.load(content, Map.of(XtextResource.OPTION_ENCODING, file.getCharset()));
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            } catch (CoreException unreadable) {
                throw new IllegalStateException(file.getFullPath() + " cannot be read", unreadable);
            }
        }
        exported.put(file, names(resource));
        return resource;
    }

    private static Set<String> names(XtextResource resource) {
        IResourceDescription.Manager manager = resource.getResourceServiceProvider()
                .getResourceDescriptionManager();
        IResourceDescription described = manager.getResourceDescription(resource);
        return StreamSupport.stream(described.getExportedObjects().spliterator(), false)
                .map(one -> one.getEClass().getName() + " " + one.getQualifiedName()).collect(Collectors.toSet());
    }

    private static URI uri(IFile file) {
        return URI.createPlatformResourceURI(file.getFullPath().toString(), true);
    }
}
