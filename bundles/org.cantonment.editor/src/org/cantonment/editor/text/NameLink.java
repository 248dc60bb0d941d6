package org.cantonment.editor.text;

import java.net.URI;

import org.cantonment.editor.api.Link;
import org.cantonment.editor.api.Target;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Path;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.hyperlink.IHyperlink;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

/** Leads from the use of a name to where it is given. */
public final class NameLink implements IHyperlink {

    private final Link link;

    NameLink(Link link) {
        this.link = link;
    }

    @Override
    public IRegion getHyperlinkRegion() {
        return new Region(link.offset(), link.length());
    }

    @Override
    public String getTypeLabel() {
        return "Name";
    }

    @Override
    public String getHyperlinkText() {
        return "Go to " + link.target().label();
    }

    @Override
    public void open() {
        open(link.target());
    }

    /**
     * Opens the file in which a name is given, and selects the name.
     *
     * @param target where the name is given
     */
    public static void open(Target target) {
        IFile file = file(target.uri());
        if (file == null) {
            return; // outside the workspace there is nothing to open
        }
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        try {
            IEditorPart editor = IDE.openEditor(page, file);
            if (editor instanceof ITextEditor text) {
                text.selectAndReveal(target.offset(), target.length());
            }
        } catch (PartInitException failure) {
            ILog.of(NameLink.class).error("Could not open " + file.getFullPath(), failure);
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
