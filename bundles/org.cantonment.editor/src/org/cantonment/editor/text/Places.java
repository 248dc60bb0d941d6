package org.cantonment.editor.text;

import java.net.URI;
import java.util.Optional;

import org.cantonment.editor.api.Target;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Path;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

/** Goes to places in files. Screen's thread only. */
public final class Places {

    private Places() {
    }

    /**
     * Opens the file in which a name is given, and selects the name.
     *
     * @param target where the name is given; outside the workspace nothing happens
     */
    public static void open(Target target) {
        editor(target.uri()).ifPresent(editor -> editor.selectAndReveal(target.offset(), target.length()));
    }

    /**
     * Opens a file and selects a line.
     *
     * @param uri the file; outside the workspace nothing happens
     * @param line the line, from 1; one that the file does not have selects nothing
     */
    public static void openLine(String uri, int line) {
        editor(uri).ifPresent(editor -> {
            IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
            try {
                IRegion region = document.getLineInformation(line - 1);
                editor.selectAndReveal(region.getOffset(), region.getLength());
            } catch (BadLocationException gone) {
                ILog.of(Places.class).info(uri + " has no line " + line, gone);
            }
        });
    }

    static Optional<ITextEditor> editor(String uri) {
        IFile file = file(uri);
        if (file == null) {
            return Optional.empty();
        }
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        try {
            return IDE.openEditor(page, file) instanceof ITextEditor editor ? Optional.of(editor) : Optional.empty();
        } catch (PartInitException failure) {
            ILog.of(Places.class).error("Could not open " + file.getFullPath(), failure);
            return Optional.empty();
        }
    }

    private static IFile file(String uri) {
        org.eclipse.emf.common.util.URI parsed = org.eclipse.emf.common.util.URI.createURI(uri);
        IWorkspaceRoot root = ResourcesPlugin.getWorkspace().getRoot();
        if (parsed.isPlatformResource()) {
            return root.getFile(new Path(parsed.toPlatformString(true)));
        }
        IFile[] files = parsed.isFile() ? root.findFilesForLocationURI(URI.create(uri)) : new IFile[0];
        return files.length == 0 ? null : files[0];
    }
}
