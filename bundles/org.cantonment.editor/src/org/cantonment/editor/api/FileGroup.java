package org.cantonment.editor.api;

import java.util.Collection;

import org.eclipse.core.resources.IFile;
import org.eclipse.xtext.resource.XtextResource;

/**
 * Files that see one another's names: one Xtext resource set and its index. It is entered by the
 * language worker alone, so it need not guard itself against other threads.
 */
public interface FileGroup {

    /**
     * The resource of a file, read from the disk if it was not held yet.
     *
     * @param file a file of this group
     * @return its resource, in this group's resource set; possibly empty, never null
     */
    XtextResource resource(IFile file);

    /**
     * Takes over what an open file now says. Called after every update of its resource, before its
     * links are looked at.
     *
     * @param resource the updated resource
     * @return the open files whose links have to be renewed because a name has come, gone or moved
     */
    Collection<IFile> updated(XtextResource resource);

    /**
     * An open file was closed: from now on what the disk says holds.
     *
     * @param file the closed file
     * @return the open files whose links have to be renewed
     */
    Collection<IFile> released(IFile file);

    /**
     * A file that is not open was made, changed or deleted on the disk.
     *
     * @param file that file
     * @return the open files whose links have to be renewed
     */
    Collection<IFile> changedOnDisk(IFile file);
}
