package org.cantonment.editor.model;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;

/** Tells the languages of files that changed on the disk while they were not open. */
final class DiskWatch implements IResourceChangeListener {

    private static final int CONTENT = IResourceDelta.CONTENT | IResourceDelta.REPLACED | IResourceDelta.ENCODING;

    private final DocumentModels models;

    DiskWatch(DocumentModels models) {
        this.models = models;
    }

    @Override
    public void resourceChanged(IResourceChangeEvent event) {
        if (event.getDelta() == null) {
            return;
        }
        try {
            event.getDelta().accept(this::visit);
        } catch (CoreException failure) {
            ILog.of(DiskWatch.class).error("Could not follow a change on the disk", failure);
        }
    }

    private boolean visit(IResourceDelta delta) {
        IResource resource = delta.getResource();
        if (resource instanceof IFile file) {
            boolean content = delta.getKind() != IResourceDelta.CHANGED || (delta.getFlags() & CONTENT) != 0;
            if (content) {
                models.changedOnDisk(file);
            }
        }
        return true;
    }
}
