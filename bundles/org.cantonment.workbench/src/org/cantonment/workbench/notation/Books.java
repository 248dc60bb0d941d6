package org.cantonment.workbench.notation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.cantonment.notation.Notation;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;

/** Which files are books of the notation. */
public final class Books {

    private Books() {
    }

    /**
     * Whether a file is a book.
     *
     * @param file any file
     * @return true if its extension is one of a book
     */
    public static boolean isBook(IFile file) {
        return Notation.isBook(file.getName());
    }

    /**
     * The books below a folder.
     *
     * @param folder an open project or a folder
     * @return its books and those of the folders in it, by path; derived and hidden ones left out
     * @throws CoreException if the folder cannot be read
     */
    public static List<IFile> below(IContainer folder) throws CoreException {
        List<IFile> books = new ArrayList<>();
        folder.accept(proxy -> {
            if (proxy.getType() == IResource.FILE) {
                IFile file = (IFile) proxy.requestResource();
                if (isBook(file)) {
                    books.add(file);
                }
            }
            return !proxy.isDerived() && !proxy.isHidden();
        }, IResource.NONE);
        books.sort(Comparator.comparing(file -> file.getFullPath().toString()));
        return books;
    }
}
